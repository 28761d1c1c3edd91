package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import lapline.pages.Paging;
import lapline.people.Person;
import lapline.people.Role;
import lapline.signoff.Skill;
import lapline.signoff.Skills;

/** Tells an instructor who needs them now: for their eye, for help, or for another try. */
@ApplicationScoped
public class SeeNeeds {
  /** So many panels in a row with the same first finding show that somebody is stuck. */
  public static final int IN_A_ROW = 3;

  private static final Duration LOOKED_BACK = Duration.ofDays(90);

  private BoardRecords records;
  private Skills skills;
  private Clock clock;

  protected SeeNeeds() {}

  @Inject
  public SeeNeeds(BoardRecords records, Skills skills, Clock clock) {
    this.records = records;
    this.skills = skills;
    this.clock = clock;
  }

  /** How many there are of each kind. */
  public record Counts(int waiting, int stuck, int returned) {}

  @Transactional
  public Counts counts(Person by) {
    UUID workshop = workshop(by);
    return new Counts(
        records.countWaiting(workshop, by.id(), latest()),
        records.countStuck(workshop, IN_A_ROW, since()),
        records.countReturned(workshop));
  }

  @Transactional
  public Paged<WaitingPanel> waiting(Person by, int page) {
    Paging paging = new Paging(page, counts(by).waiting());
    return new Paged<>(
        paging, records.waiting(workshop(by), by.id(), latest(), paging.first(), Paging.SIZE));
  }

  @Transactional
  public Paged<StuckLearner> stuck(Person by, int page) {
    Paging paging = new Paging(page, counts(by).stuck());
    return new Paged<>(
        paging, records.stuck(workshop(by), IN_A_ROW, since(), paging.first(), Paging.SIZE));
  }

  @Transactional
  public Paged<ReturnedPanel> returned(Person by, int page) {
    Paging paging = new Paging(page, counts(by).returned());
    return new Paged<>(paging, records.returned(workshop(by), paging.first(), Paging.SIZE));
  }

  private static UUID workshop(Person by) {
    by.mustBe(Role.INSTRUCTOR);
    return by.workshop();
  }

  /** A panel older than any rule looks back cannot help its apprentice any more. */
  private int latest() {
    return skills.all().stream().map(Skill::rule).mapToInt(Skill.Rule::ofLast).max().orElse(1);
  }

  private Instant since() {
    return clock.instant().minus(LOOKED_BACK);
  }
}
