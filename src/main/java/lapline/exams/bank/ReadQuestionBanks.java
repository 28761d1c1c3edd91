package lapline.exams.bank;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.logging.Logger;
import lapline.content.ContentFiles;

/** Reads the question banks once, since their files change only with the application. */
@ApplicationScoped
public class ReadQuestionBanks {
  private static final Logger LOG = Logger.getLogger("lapline.content");

  @Produces
  @Singleton
  QuestionBanks read(ContentFiles files) {
    return new BankReader(files).read();
  }

  /** What is wrong is told at the start, not when the first apprentice sits down. */
  void tell(@Observes @Initialized(ApplicationScoped.class) Object start, QuestionBanks banks) {
    banks.problems().forEach(problem -> LOG.warning(problem.toString()));
    LOG.info(banks.banks().size() + " question banks can be read");
  }
}
