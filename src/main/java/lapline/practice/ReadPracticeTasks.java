package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.logging.Logger;
import lapline.content.ContentFiles;

/** Reads the practice tasks once, since their files change only with the application. */
@ApplicationScoped
public class ReadPracticeTasks {
  private static final Logger LOG = Logger.getLogger("lapline.content");

  @Produces
  @Singleton
  PracticeTasks read(ContentFiles files) {
    return PracticeTasks.read(files);
  }

  /** What is wrong is told at the start, not when the first apprentice meets it. */
  void tell(@Observes @Initialized(ApplicationScoped.class) Object start, PracticeTasks tasks) {
    tasks.problems().forEach(problem -> LOG.warning(problem.toString()));
    LOG.info(tasks.all().size() + " practice tasks can be read");
  }
}
