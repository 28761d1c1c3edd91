package lapline.demo;

import jakarta.annotation.Resource;
import jakarta.enterprise.concurrent.ManagedExecutorService;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.random.RandomGenerator;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Secrets;
import lapline.server.Start;

/**
 * Fills an empty database with an invented workshop when the server was started for a
 * demonstration. Its one password is drawn at random and stands in the log and in {@code
 * demo-accounts.txt}.
 */
@ApplicationScoped
public class DemoWorkshop {
  private static final Logger LOG = Logger.getLogger("lapline.demo");

  @Inject private PeopleRecords records;
  @Inject private DemoPeople people;
  @Inject private DemoScenario scenario;
  @Resource private ManagedExecutorService background;
  @Inject private Clock clock;
  @Inject private RandomGenerator chance;

  void make(@Observes Start.Started start) {
    if (!start.settings().demo()) {
      return;
    }
    if (!records.anyRegistrar()) {
      makeAccounts(start.settings().dataFolder().resolve("demo-accounts.txt"));
    }
    List<Person> all = people.made();
    if (start.settings().demoStory() && !all.isEmpty()) {
      // the story takes a while; the first page need not wait for it
      background.execute(() -> live(all));
    }
  }

  private void makeAccounts(Path file) {
    String password = Secrets.code(chance, 16);
    // the file first: accounts whose password nobody knows would be worse than a file too many
    writeAccounts(file, password, DemoPeople.all());
    people.make(password, clock.instant());
    LOG.info(
        "Demo workshop made. Sign in as apprentice1, instructor1, examiner, owner or registrar; password "
            + password);
  }

  /** The accounts are good without it, so the server goes on even if the story breaks off. */
  private void live(List<Person> all) {
    try {
      scenario.live(all, clock.instant());
    } catch (RuntimeException e) {
      LOG.log(Level.SEVERE, "The demo's half year broke off; its accounts can be used.", e);
    }
  }

  private static void writeAccounts(Path file, String password, List<Person> all) {
    StringBuilder text = new StringBuilder("password " + password + "\n");
    all.forEach(p -> text.append(p.signInName()).append(" = ").append(p.name()).append('\n'));
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }
}
