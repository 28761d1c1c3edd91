package lapline.server;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.servlet.ServletContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.logging.Logger;
import lapline.people.SetUpWorkshop;

/** What happens once when the application starts: schema, content, demo workshop or set-up link. */
@ApplicationScoped
public class Start {
  private static final Logger LOG = Logger.getLogger("lapline.start");

  @Inject private Settings settings;
  @Inject private Backup backup;
  @Inject private Schema schema;
  @Inject private SetUpWorkshop setUp;
  @Inject private Event<Started> started;

  /**
   * The schema is ready and content may be read; the demo workshop is made by who observes this.
   */
  public record Started(Settings settings) {}

  void run(@Observes @Initialized(ApplicationScoped.class) ServletContext context) {
    try {
      Files.createDirectories(settings.dataFolder());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot make the data folder " + settings.dataFolder(), e);
    }
    backup.begin();
    schema.bringUpToDate();
    started.fire(new Started(settings));
    setUp
        .offer()
        .ifPresent(
            code ->
                LOG.info(
                    "No registrar yet. Open this link once to set up the workshop: "
                        + settings.address()
                        + "/setup?code="
                        + code));
    LOG.info(
        "Lapline is ready at "
            + settings.address()
            + "/ with its data in "
            + settings.dataFolder());
  }
}
