package lapline.lessons;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.logging.Logger;
import lapline.content.ContentFiles;

/** Reads the course once, since its files change only with the application. */
@ApplicationScoped
public class ReadCurriculum {
  private static final Logger LOG = Logger.getLogger("lapline.content");

  @Produces
  @Singleton
  Curriculum read(ContentFiles files) {
    return new CurriculumReader(files).read();
  }

  /** What is wrong is told at the start, not when the first learner meets it. */
  void tell(@Observes @Initialized(ApplicationScoped.class) Object start, Curriculum course) {
    course.problems().forEach(problem -> LOG.warning(problem.toString()));
    LOG.info(course.lessons().size() + " of " + course.units().size() + " lessons can be read");
  }
}
