package lapline.signoff;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import lapline.content.units.PerSystem;
import lapline.demo.ScenarioClock;
import lapline.exams.MarkedAnew;
import lapline.exams.RememberedPapers;
import lapline.exams.Sitting;
import lapline.grading.Grading;
import lapline.grading.RememberedGradings;
import lapline.lessons.Curriculum;
import lapline.lessons.Lesson;
import lapline.lessons.LessonText;
import lapline.lessons.RememberedLessons;
import lapline.people.Person;
import lapline.people.RememberedPeople;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.Attempt.State;
import lapline.practice.RememberedAttempts;
import lapline.signoff.Step.Kind;
import lapline.trade.measure.UnitSystem;

/**
 * An invented workshop with one skill and a learner on the way to it, wired by hand around records
 * in memory, with a clock that the test turns on.
 */
final class SignOffShop {
  static final String SKILL = "clear";
  static final String WHY = "Laid three doors beside me without a word.";
  static final Skill CLEAR =
      new Skill(
          SKILL,
          "Clear",
          "clear",
          "Lay clear alone",
          new Skill.Rule("1", true, true, 3, 4, List.of("clear/*"), Period.ofMonths(6), 1),
          Period.ofMonths(12),
          "because");
  private static final LessonText NO_TEXT = new LessonText(List.of(), List.of(), List.of());
  private static final Lesson LESSON =
      new Lesson("clear", "Clear", "v1", 5, new PerSystem<>(NO_TEXT, NO_TEXT));

  final ScenarioClock clock = new ScenarioClock(Instant.parse("2031-03-04T14:05:00Z"));
  final UUID workshop = UUID.randomUUID();
  final RememberedPeople people = new RememberedPeople();
  final Person learner = person(workshop, Role.APPRENTICE);
  final Person instructor = person(workshop, Role.INSTRUCTOR);
  final Person examiner = person(workshop, Role.EXAMINER);
  final Person owner = person(workshop, Role.OWNER);
  final Person neighbour = person(UUID.randomUUID(), Role.values());
  final RememberedSignOffs signOffs = new RememberedSignOffs();
  final RememberedGradings gradings = new RememberedGradings();
  final DecideSkill decide;
  final ChangeSignOff change;
  final StartRenewal renew;
  private final RememberedAttempts attempts = new RememberedAttempts();
  private final RememberedPapers papers = new RememberedPapers();
  private final RememberedLessons lessons = new RememberedLessons();
  private final KeepStandings standings;

  SignOffShop() {
    Skills skills = new Skills(List.of(CLEAR), List.of());
    Curriculum course = new Curriculum(List.of(), Map.of("clear", LESSON), List.of());
    GatherEvidence gather = new GatherEvidence(course, lessons, attempts, papers, signOffs);
    standings = new KeepStandings(skills, gather, signOffs, clock);
    decide = new DecideSkill(skills, standings, signOffs, gradings, people, clock, new Random(7));
    change = new ChangeSignOff(signOffs, skills, standings, clock);
    renew = new StartRenewal(standings, people, skills);
  }

  Person person(UUID where, Role... roles) {
    Person person =
        new Person(
            UUID.randomUUID(),
            where,
            "Somebody Invented",
            UUID.randomUUID().toString(),
            Set.of(roles),
            UnitSystem.METRIC,
            ZoneId.of("Europe/Dublin"),
            true);
    people.add(person, clock.instant());
    return person;
  }

  /** Everything the rule asks for: lesson, exam, three good panels, one of them accepted. */
  void meetsTheRule(Person who) {
    lessons.read(who.id(), "clear", "v1", clock.instant());
    Sitting.Outcome passed = new Sitting.Outcome(clock.instant(), 90, true);
    Sitting sat =
        new Sitting(UUID.randomUUID(), workshop, who.id(), "clear", clock.instant(), passed);
    papers.add(sat, null);
    threePanels(who, instructor);
  }

  /** The paper that was passed is marked anew without a question, and falls short. */
  void paperFalls(Person who) {
    UUID paper = papers.passed(who.id()).get("clear").id();
    papers.keep(
        new MarkedAnew(
            UUID.randomUUID(),
            paper,
            clock.instant(),
            instructor.id(),
            "an-item",
            true,
            "Two answers fit.",
            new MarkedAnew.Mark(0.75, true, Set.of()),
            new MarkedAnew.Mark(0.7, false, Set.of("an-item"))));
    advanced(who);
  }

  void threePanels(Person who, Person grader) {
    panel(who, State.SCORED);
    panel(who, State.SCORED);
    UUID accepted = panel(who, State.ACCEPTED);
    gradings.add(
        new Grading(
            UUID.randomUUID(),
            accepted,
            workshop,
            grader.id(),
            clock.instant(),
            Grading.Decision.ACCEPTED,
            "",
            Map.of(),
            List.of()));
    advanced(who);
  }

  /** A panel with good numbers, done just now. */
  UUID panel(Person who, State state) {
    clock.pass(Duration.ofMinutes(1));
    Attempt draft =
        new Attempt(
            UUID.randomUUID(),
            workshop,
            who.id(),
            "clear/two-coats",
            "v1",
            "clear",
            SKILL,
            UUID.randomUUID().toString(),
            "",
            null,
            UnitSystem.METRIC,
            State.DRAFT,
            0,
            clock.instant(),
            null);
    attempts.add(draft);
    Attempt scored = draft.judged("v1", new Attempt.Outcome(clock.instant(), 92, true));
    attempts.keepJudgement(scored, draft.sheetCode(), null, null);
    attempts.changeState(draft.id(), state);
    return draft.id();
  }

  void advanced(Person who) {
    standings.advance(who.id(), workshop, CLEAR);
  }

  List<String> grant(Person by) {
    return decide.run(by, learner.id(), SKILL, true, WHY);
  }

  List<String> notYet(Person by) {
    return decide.run(by, learner.id(), SKILL, false, WHY);
  }

  Evidence evidence() {
    return decide.evidence(examiner, learner.id(), SKILL);
  }

  SignOff signOff() {
    return signOffs.latest(learner.id(), SKILL).orElseThrow();
  }

  List<Step> steps() {
    return signOffs.steps(learner.id(), SKILL);
  }

  Optional<String> change(Person by, Kind kind) {
    return change.run(by, signOff().id(), kind, WHY);
  }

  /** What the hourly look at the clock does: how many standings it gathered anew. */
  int refresh() {
    return standings.refresh(50);
  }

  /** The same after the skill has left the course. */
  int refreshWithoutTheSkill() {
    return new KeepStandings(new Skills(List.of(), List.of()), null, signOffs, clock).refresh(50);
  }

  Standing standing() {
    return signOffs.standing(learner.id(), SKILL).orElseThrow();
  }

  boolean learnerWaits() {
    return signOffs.ready(workshop, 0, 50).stream().anyMatch(s -> s.person().equals(learner.id()));
  }
}
