package lapline.signoff;

import jakarta.annotation.PreDestroy;
import jakarta.annotation.Resource;
import jakarta.enterprise.concurrent.ManagedScheduledExecutorService;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import lapline.server.Start;

/** Brings up to date every hour what nobody but time has changed: panels grow too old to count. */
@ApplicationScoped
public class AgeStandings {
  private static final Logger LOG = Logger.getLogger("lapline.signoff");

  /** As many as are written in one transaction, so that nobody waits for long. */
  private static final int AT_ONCE = 50;

  @Resource private ManagedScheduledExecutorService hours;
  @Inject private KeepStandings standings;
  private ScheduledFuture<?> everyHour;

  void begin(@Observes Start.Started started) {
    everyHour = hours.scheduleWithFixedDelay(this::age, 1, 60, TimeUnit.MINUTES);
  }

  @PreDestroy
  void end() {
    if (everyHour != null) {
      everyHour.cancel(false);
    }
  }

  private void age() {
    try {
      while (standings.refresh(AT_ONCE) == AT_ONCE) {
        Thread.yield();
      }
    } catch (RuntimeException e) {
      // thrown on, it would be the last time
      LOG.log(Level.WARNING, "standings could not be brought up to date; again in an hour", e);
    }
  }
}
