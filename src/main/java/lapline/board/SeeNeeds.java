package lapline.board;

import static java.util.stream.Collectors.groupingBy;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.pages.Paging;
import lapline.people.Person;
import lapline.people.Role;
import lapline.signoff.Skill;
import lapline.signoff.Skills;

/** Tells an instructor who needs them now: for their eye, for help, or for another try. */
@ApplicationScoped
public class SeeNeeds {
  private static final Duration LOOKED_BACK = Duration.ofDays(90);

  private NeedRecords records;
  private Skills skills;
  private Clock clock;

  protected SeeNeeds() {}

  @Inject
  public SeeNeeds(NeedRecords records, Skills skills, Clock clock) {
    this.records = records;
    this.skills = skills;
    this.clock = clock;
  }

  /**
   * How many there are of each kind.
   *
   * @param learners who wait for an eye, each once for every skill
   * @param waiting panels they wait with
   */
  public record Counts(int learners, int waiting, int stuck, int returned) {}

  @Transactional
  public Counts counts(Person by) {
    UUID workshop = workshop(by);
    NeedRecords.WaitingCount waiting = records.countWaiting(workshop, by.id());
    return new Counts(
        (int) waiting.learners(),
        (int) waiting.panels(),
        records.countStuck(workshop, since()),
        records.countReturned(workshop));
  }

  /** A page of people with the panels they wait with; {@code counts} as they were just read. */
  @Transactional
  public Paged<WaitingLearner> waiting(Person by, Counts counts, int page) {
    Paging paging = new Paging(page, counts.learners());
    List<WaitingLearner> learners =
        records.waiting(workshop(by), by.id(), paging.first(), Paging.SIZE);
    Map<Key, List<WaitingPanel>> panels =
        records
            .waitingPanels(learners.stream().map(WaitingLearner::person).distinct().toList())
            .stream()
            .filter(this::counts)
            .collect(groupingBy(p -> new Key(p.person(), p.skill())));
    return new Paged<>(
        paging,
        learners.stream()
            .map(l -> l.with(panels.getOrDefault(new Key(l.person(), l.skill()), List.of())))
            .toList());
  }

  /** A learner and the skill that their panels wait for. */
  private record Key(UUID person, String skill) {}

  private boolean counts(WaitingPanel panel) {
    return skills
        .find(panel.skill())
        .map(Skill::rule)
        .filter(r -> r.covers(panel.task()))
        .isPresent();
  }

  @Transactional
  public Paged<StuckLearner> stuck(Person by, Counts counts, int page) {
    Paging paging = new Paging(page, counts.stuck());
    return new Paged<>(paging, records.stuck(workshop(by), since(), paging.first(), Paging.SIZE));
  }

  @Transactional
  public Paged<ReturnedPanel> returned(Person by, Counts counts, int page) {
    Paging paging = new Paging(page, counts.returned());
    return new Paged<>(paging, records.returned(workshop(by), paging.first(), Paging.SIZE));
  }

  private static UUID workshop(Person by) {
    by.mustBe(Role.INSTRUCTOR);
    return by.workshop();
  }

  private Instant since() {
    return clock.instant().minus(LOOKED_BACK);
  }
}
