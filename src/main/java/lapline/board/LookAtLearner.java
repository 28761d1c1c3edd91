package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.lessons.Curriculum;
import lapline.lessons.ExamFacts;
import lapline.lessons.Lesson;
import lapline.lessons.LessonProgress;
import lapline.lessons.LessonRecords;
import lapline.lessons.NextStep;
import lapline.lessons.Unit;
import lapline.lessons.UnitFacts;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.AttemptQuery;
import lapline.practice.AttemptRecords;
import lapline.practice.PracticeTasks;
import lapline.signoff.Evidence;
import lapline.signoff.GatherEvidence;
import lapline.signoff.SignOff;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Skill;
import lapline.signoff.Skills;

/** Where a learner is in each unit, and what is next; for themself, or for who teaches them. */
@ApplicationScoped
public class LookAtLearner {
  private static final int LAST_PANELS = 6;

  private Curriculum curriculum;
  private LessonRecords lessons;
  private PracticeTasks tasks;
  private AttemptRecords attempts;
  private Skills skills;
  private GatherEvidence gather;
  private SignOffRecords signOffs;
  private LookAtExam exams;
  private PeopleRecords people;
  private Clock clock;

  protected LookAtLearner() {}

  @Inject
  public LookAtLearner(
      Curriculum curriculum,
      LessonRecords lessons,
      PracticeTasks tasks,
      AttemptRecords attempts,
      Skills skills,
      GatherEvidence gather,
      SignOffRecords signOffs,
      LookAtExam exams,
      PeopleRecords people,
      Clock clock) {
    this.curriculum = curriculum;
    this.lessons = lessons;
    this.tasks = tasks;
    this.attempts = attempts;
    this.skills = skills;
    this.gather = gather;
    this.signOffs = signOffs;
    this.exams = exams;
    this.people = people;
    this.clock = clock;
  }

  /** Every unit of the course as this learner stands in it. */
  @Transactional
  public List<UnitView> units(Person by, UUID learner) {
    Person person = find(by, learner);
    Map<String, LessonProgress> progress = lessons.progress(learner);
    return curriculum.units().stream()
        .map(u -> view(person, u, progress.getOrDefault(u.id(), LessonProgress.NONE)))
        .toList();
  }

  @Transactional
  public UnitView unit(Person by, UUID learner, String unitId) {
    Person person = find(by, learner);
    Unit unit = curriculum.unit(unitId).orElseThrow(NotFoundException::new);
    return view(person, unit, lessons.progress(learner).getOrDefault(unitId, LessonProgress.NONE));
  }

  private Person find(Person by, UUID learner) {
    Person person = people.person(learner).orElseThrow(NotFoundException::new);
    by.mustBeIn(person.workshop());
    if (!by.id().equals(learner)) {
      by.mustBe(Role.INSTRUCTOR, Role.EXAMINER, Role.OWNER, Role.REGISTRAR);
    }
    return person;
  }

  private UnitView view(Person person, Unit unit, LessonProgress progress) {
    AttemptQuery all = AttemptQuery.of(person.workshop(), 0, LAST_PANELS).by(person.id());
    Skill skill = skills.find(unit.skill()).orElseThrow(NotFoundException::new);
    Evidence evidence = gather.of(person.id(), person.workshop(), skill, clock.instant());
    List<Attempt> panels = attempts.page(all.towards(unit.skill()));
    Optional<Attempt> draft = panels.stream().filter(Attempt::isDraft).findFirst();
    Optional<SignOff> signOff = signOffs.latest(person.id(), skill.id());
    Optional<SignOff.Standing> standing = signOff.map(s -> s.at(clock.instant()));
    int checks = curriculum.lesson(unit.id()).map(Lesson::checks).map(List::size).orElse(0);
    // one that is near its end is to be renewed, which is work again
    boolean settled = signOff.filter(s -> s.settledAt(clock.instant())).isPresent();
    boolean passed = evidence.examPassed();
    ExamFacts exam = passed ? ExamFacts.NONE : exams.facts(person, unit.id());
    UnitFacts facts = facts(progress, checks, exam, draft.isPresent(), evidence, panels, settled);
    return new UnitView(
        unit,
        NextStep.of(facts),
        facts.checksRight(),
        checks,
        facts.lessonRead(),
        exam.rests() ? exams.from(person, unit.id()).orElse(null) : null,
        tasks.ofUnit(unit.id()),
        draft.orElse(null),
        panels.stream().filter(a -> !a.isDraft()).toList(),
        evidence,
        signOff.orElse(null),
        standing.orElse(null),
        settled);
  }

  private static UnitFacts facts(
      LessonProgress progress,
      int checks,
      ExamFacts exam,
      boolean draft,
      Evidence evidence,
      List<Attempt> panels,
      boolean signedOff) {
    boolean enough = evidence.counting() >= evidence.skill().rule().accepted();
    // enough good panels, and only the instructor's eye is missing on some of them
    boolean benchMissing = enough && evidence.graded() < evidence.skill().rule().graded();
    int waiting = (int) panels.stream().filter(a -> a.state() == Attempt.State.SCORED).count();
    int counting = benchMissing ? evidence.counting() - 1 : evidence.counting();
    return new UnitFacts(
        progress.read() != null,
        checks,
        Math.min(checks, progress.right().size()),
        evidence.examPassed(),
        exam,
        draft,
        evidence.skill().rule().accepted(),
        counting,
        benchMissing ? waiting : 0,
        signedOff);
  }
}
