package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.board.TrainingRecord.Line;
import lapline.board.TrainingRecord.Proof;
import lapline.content.Json;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.signoff.Evidence;
import lapline.signoff.SignOff;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Step;

/** Puts together the training record of one person, for who runs the shop and for themselves. */
@ApplicationScoped
public class ShowTrainingRecord {
  private static final int MOST_STEPS = 100;

  private BoardRecords records;
  private SignOffRecords signOffs;
  private PeopleRecords people;
  private SkillMarks marks;
  private Clock clock;

  protected ShowTrainingRecord() {}

  @Inject
  ShowTrainingRecord(
      BoardRecords records,
      SignOffRecords signOffs,
      PeopleRecords people,
      SkillMarks marks,
      Clock clock) {
    this.records = records;
    this.signOffs = signOffs;
    this.people = people;
    this.marks = marks;
    this.clock = clock;
  }

  @Transactional
  public TrainingRecord of(Person by, UUID id) {
    Person person = people.person(id).orElseThrow(NotFoundException::new);
    by.mustBeIn(person.workshop());
    if (!by.id().equals(id)) {
      by.mustBe(Role.OWNER, Role.REGISTRAR, Role.INSTRUCTOR, Role.EXAMINER);
    }
    Named named = new Named(id, person.name());
    List<TakenStep> steps = records.steps(id, MOST_STEPS);
    String workshop = people.workshop(person.workshop()).orElseThrow().name();
    return new TrainingRecord(named, workshop, clock.instant(), lines(named, steps), steps);
  }

  private List<Line> lines(Named person, List<TakenStep> steps) {
    Map<String, SignOff> granted =
        signOffs.latest(Set.of(person.id())).stream()
            .collect(Collectors.toMap(SignOff::skill, Function.identity()));
    Map<String, PanelCount> panels =
        records.panels(person.id()).stream()
            .collect(Collectors.toMap(PanelCount::skill, Function.identity()));
    return marks.rows(List.of(person), marks.asked("")).get(0).marks().stream()
        .map(m -> line(m, granted.get(m.skill().id()), panels.get(m.skill().id()), steps))
        .toList();
  }

  private static Line line(
      SkillMark mark, SignOff signOff, PanelCount panels, List<TakenStep> steps) {
    TakenStep grant = signOff == null ? null : grant(steps, signOff);
    return new Line(
        mark,
        signOff == null ? null : signOff.granted(),
        signOff == null ? "" : signOff.ruleVersion(),
        grant == null ? "" : grant.by(),
        signOff == null ? "" : signOff.code(),
        signOff == null ? null : stopped(steps, signOff),
        grant == null ? null : proof(grant.evidence()),
        panels == null ? 0 : panels.tried(),
        panels == null ? 0 : panels.accepted());
  }

  /** The step by which the sign-off was granted; steps come latest first. */
  private static TakenStep grant(List<TakenStep> steps, SignOff signOff) {
    return steps.stream()
        .filter(s -> s.kind() == Step.Kind.GRANTED && s.skill().equals(signOff.skill()))
        .findFirst()
        .orElse(null);
  }

  /** The step that took the sign-off away; steps come latest first. */
  private static TakenStep stopped(List<TakenStep> steps, SignOff signOff) {
    Step.Kind kind =
        switch (signOff.state()) {
          case GRANTED -> null;
          case SUSPENDED -> Step.Kind.SUSPENDED;
          case WITHDRAWN -> Step.Kind.WITHDRAWN;
        };
    return steps.stream()
        .filter(s -> s.kind() == kind && s.skill().equals(signOff.skill()))
        .findFirst()
        .orElse(null);
  }

  private static Proof proof(String json) {
    Evidence then = Json.read(json, Evidence.class);
    return new Proof(
        then.lessonDone(),
        then.examPassed(),
        then.counting(),
        then.panels().size(),
        then.graded(),
        then.tried());
  }
}
