package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import lapline.pages.Paging;
import lapline.people.Person;
import lapline.people.Role;

/** Tells what runs out when, and what has run out, so that the renewal begins in time. */
@ApplicationScoped
public class SeeDue {
  private BoardRecords records;
  private Clock clock;

  protected SeeDue() {}

  @Inject
  public SeeDue(BoardRecords records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  /**
   * @param days how far ahead; 0 for what has ended already
   */
  @Transactional
  public Paged<Ending> ending(Person by, int days, int page) {
    Paging paging = new Paging(page, count(by, days));
    return new Paged<>(
        paging, records.ending(by.workshop(), from(days), to(days), paging.first(), Paging.SIZE));
  }

  @Transactional
  public int count(Person by, int days) {
    by.mustBe(Role.OWNER, Role.REGISTRAR);
    return records.countEnding(by.workshop(), from(days), to(days));
  }

  private Instant from(int days) {
    return days == 0 ? Instant.EPOCH : clock.instant();
  }

  private Instant to(int days) {
    return clock.instant().plus(Duration.ofDays(days));
  }
}
