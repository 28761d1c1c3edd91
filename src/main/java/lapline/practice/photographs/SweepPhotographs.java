package lapline.practice.photographs;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import lapline.server.Start;

/**
 * Takes away the files of pictures that no panel shows any more: at the server's start, and when
 * pictures are taken off panels, at most once an hour. Never at once, since another panel may be
 * taking up the same picture, and since what was let go may yet be undone.
 */
@ApplicationScoped
public class SweepPhotographs {
  /** Far longer than any panel takes to take up a picture. */
  static final Duration GRACE = Duration.ofHours(1);

  private PhotographFiles files;
  private PhotographRecords records;
  private Clock clock;
  private Instant next = Instant.MIN;

  protected SweepPhotographs() {}

  @Inject
  public SweepPhotographs(PhotographFiles files, PhotographRecords records, Clock clock) {
    this.files = files;
    this.records = records;
    this.clock = clock;
  }

  void started(@Observes Start.Started start) {
    ifDue();
  }

  /** Sweeps unless it was done within the hour. */
  public synchronized void ifDue() {
    Instant now = clock.instant();
    if (now.isBefore(next)) {
      return;
    }
    next = now.plus(GRACE);
    files.sweep(now.minus(GRACE), records::shown);
  }
}
