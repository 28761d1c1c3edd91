package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import lapline.pages.Paging;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/** Shows an instructor what goes wrong most in the workshop, and where one person stands. */
@ApplicationScoped
public class LookAtCohort {
  /** How far back findings are counted. */
  public static final int DAYS = 90;

  private static final int MOST_FINDINGS = 12;

  private BoardRecords records;
  private PeopleRecords people;
  private SkillMarks marks;
  private Clock clock;

  protected LookAtCohort() {}

  @Inject
  LookAtCohort(BoardRecords records, PeopleRecords people, SkillMarks marks, Clock clock) {
    this.records = records;
    this.people = people;
    this.marks = marks;
    this.clock = clock;
  }

  /** The causes found first most often in the last {@value #DAYS} days. */
  @Transactional
  public List<FindingCount> findings(Person by) {
    by.mustBe(Role.INSTRUCTOR);
    return records.findings(by.workshop(), since(), MOST_FINDINGS);
  }

  /** The panels behind one of those counts, latest first. */
  @Transactional
  public Paged<FoundPanel> found(Person by, String unit, String finding, int page) {
    by.mustBe(Role.INSTRUCTOR);
    BoardRecords.Cause cause = new BoardRecords.Cause(unit, finding);
    Instant since = since();
    Paging paging = new Paging(page, records.countFound(by.workshop(), cause, since));
    return new Paged<>(
        paging, records.found(by.workshop(), cause, since, paging.first(), Paging.SIZE));
  }

  private Instant since() {
    return clock.instant().minus(Duration.ofDays(DAYS));
  }

  /** How many people are on their way to each skill; most first. */
  @Transactional
  public List<SkillCount> onTheWay(Person by) {
    by.mustBe(Role.INSTRUCTOR);
    return records.onTheWay(by.workshop());
  }

  /** Somebody of the same workshop with their marks. */
  @Transactional
  public BoardRow person(Person by, UUID id) {
    by.mustBe(Role.INSTRUCTOR);
    Person person = people.person(id).orElseThrow(NotFoundException::new);
    by.mustBeIn(person.workshop());
    return marks.rows(List.of(new Named(id, person.name())), marks.asked("")).get(0);
  }
}
