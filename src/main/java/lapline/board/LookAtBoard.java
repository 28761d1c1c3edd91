package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
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

  /** One page of people by name; where one skill is asked for, those first who may. */
  @Transactional
  public Paged<BoardRow> rows(Person by, String skill, int page) {
    List<Skill> asked = marks.asked(skill);
    return page(
        by,
        asked,
        page,
        first ->
            asked.size() > 1
                ? records.people(by.workshop(), first, Paging.SIZE)
                : records.goodFirst(
                    by.workshop(), asked.get(0).id(), clock.instant(), first, Paging.SIZE));
  }

  /** The same, where one skill is asked for with those first who are on their way to it. */
  @Transactional
  public Paged<BoardRow> learners(Person by, String skill, int page) {
    List<Skill> asked = marks.asked(skill);
    return page(
        by,
        asked,
        page,
        first ->
            asked.size() > 1
                ? records.people(by.workshop(), first, Paging.SIZE)
                : records.waitingFirst(by.workshop(), asked.get(0).id(), first, Paging.SIZE));
  }

  private Paged<BoardRow> page(
      Person by, List<Skill> asked, int page, IntFunction<List<Named>> people) {
    mayLook(by);
    Paging paging = new Paging(page, records.countPeople(by.workshop()));
    return new Paged<>(paging, marks.rows(people.apply(paging.first()), asked));
  }

  /** How many people have a good sign-off today, skill by skill in the course's order. */
  @Transactional
  public List<SkillCount> good(Person by, String skill) {
    mayLook(by);
    Map<String, Long> good =
        records.good(by.workshop(), clock.instant()).stream()
            .collect(Collectors.toMap(SkillCount::skill, SkillCount::people));
    return marks.asked(skill).stream()
        .map(s -> new SkillCount(s.id(), good.getOrDefault(s.id(), 0L)))
        .toList();
  }

  private static void mayLook(Person by) {
    by.mustBe(Role.OWNER, Role.INSTRUCTOR, Role.REGISTRAR, Role.EXAMINER);
  }
}
