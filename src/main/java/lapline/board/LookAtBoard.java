package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import lapline.pages.Paging;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.signoff.Skill;

/** Shows who may do what today, and how far the others are. */
@ApplicationScoped
public class LookAtBoard {
  private BoardRecords records;
  private PeopleRecords people;
  private SkillMarks marks;
  private Clock clock;

  protected LookAtBoard() {}

  @Inject
  LookAtBoard(BoardRecords records, PeopleRecords people, SkillMarks marks, Clock clock) {
    this.records = records;
    this.people = people;
    this.marks = marks;
    this.clock = clock;
  }

  /** The skills that the board has columns for: the one asked for, or all. */
  public List<Skill> columns(String skill) {
    return marks.asked(skill);
  }

  /** Whose board it is: on a wall it has to say so. */
  @Transactional
  public String workshop(Person by) {
    return people.workshop(by.workshop()).orElseThrow().name();
  }

  @Transactional
  public Paged<BoardRow> rows(Person by, String skill, int page) {
    mayLook(by);
    Paging paging = new Paging(page, records.countPeople(by.workshop()));
    List<Named> learners = records.people(by.workshop(), paging.first(), Paging.SIZE);
    return new Paged<>(paging, marks.rows(learners, marks.asked(skill)));
  }

  /** How many people have a good sign-off today: for one skill, or for any. */
  @Transactional
  public int countGood(Person by, String skill) {
    mayLook(by);
    List<Skill> asked = marks.asked(skill);
    String one = asked.size() == 1 ? asked.get(0).id() : null;
    return records.countGood(by.workshop(), one, clock.instant());
  }

  private static void mayLook(Person by) {
    by.mustBe(Role.OWNER, Role.INSTRUCTOR, Role.REGISTRAR, Role.EXAMINER);
  }
}
