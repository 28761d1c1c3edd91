package lapline.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import lapline.people.Person;
import lapline.practice.PracticeTask;
import lapline.practice.ScoreAttempt;

/** One invented apprentice going through one unit of the course. */
final class DemoLearner {
  /** Panels beyond the plan to come to what a rule asks for; good days are no certainty. */
  private static final int MOST_EXTRA = 8;

  /** Who planned so many panels of a unit goes on to its exam. */
  private static final int ENOUGH = 6;

  /** Days between panels that somebody does to have a sign-off renewed. */
  private static final int RENEWAL_DAYS = 4;

  /** What is left of a weakness after many panels. */
  private static final double PRACTISED = 0.02;

  private final DemoDesk desk;
  private final DemoStaff staff;
  private final DemoChapter chapter;
  private final DemoPlan plan;
  private final Person learner;
  private final UUID gunCard;
  private final DemoPanels panels;
  private final DemoGrading grading;
  private final DemoSignOffs signOffs;

  private final DemoDays days;

  private int written;
  private Instant finished;

  /**
   * @param gunCard of the gun that every second apprentice takes to clear
   * @param now where the story ends
   */
  DemoLearner(DemoDesk desk, DemoStaff staff, DemoChapter chapter, UUID gunCard, Instant now) {
    this.desk = desk;
    this.staff = staff;
    this.chapter = chapter;
    this.plan = chapter.plan();
    this.learner = staff.apprentice(plan.number());
    this.gunCard = plan.number() % 2 == 0 ? gunCard : null;
    this.days = new DemoDays(new ShopHours(learner.zone()), now);
    this.finished = now.minus(Duration.ofDays(1));
    this.panels = new DemoPanels(desk);
    this.grading = new DemoGrading(desk);
    this.signOffs = new DemoSignOffs(desk, staff.examiner());
  }

  /** Lesson, panels, exam and, where planned, the decision; then what is left lying today. */
  void study() {
    desk.clock.set(chapter.panel(0, days.now()));
    List<PracticeTask> tasks = desk.tasks.ofUnit(chapter.unit());
    DemoLessons lessons = new DemoLessons(desk);
    lessons.read(learner, chapter.unit());
    List<Form> forms = plan.forms(chapter.number(), desk.chance);
    for (int i = 0; i < forms.size(); i++) {
      // who is stuck stays with the unit's first task; the others go through all of them
      int task = plan.stuck(chapter.number()) ? 0 : i * tasks.size() / forms.size();
      desk.clock.set(chapter.panel(i, days.now()));
      panel(tasks.get(task), forms.get(i));
    }
    if (forms.size() >= ENOUGH) {
      desk.clock.set(days.exam(desk.clock.instant()));
      lessons.pass(learner, chapter.unit(), (plan.number() + chapter.number()) % 4 == 3);
      more(tasks.get(tasks.size() - 1));
    }
    if (chapter.isSigned()) {
      desk.clock.pass(Duration.ofHours(20));
      signOffs.decide(learner, chapter.unit());
    }
    if (chapter.isLatest()) {
      renew(tasks.get(tasks.size() - 1));
      leave(tasks.get(0));
    }
  }

  /** Who was signed off long ago shows again that the skill is there. */
  private void renew(PracticeTask task) {
    for (int left = plan.renewing(); left > 0; left--) {
      desk.clock.set(days.now().minus(Duration.ofDays((long) RENEWAL_DAYS * left)));
      panel(task, new Form(PRACTISED, plan.fault()));
    }
  }

  /** Who worked yesterday has a panel half written down today; one may not spray just now. */
  private void leave(PracticeTask task) {
    if (plan.ended() < 2) {
      desk.clock.set(days.draft(finished));
      panels.leaveDraft(learner, task, new Form(0.3, plan.fault()));
    }
    if (plan.suspended()) {
      desk.clock.set(days.now().minus(Duration.ofDays(5)));
      signOffs.suspendSpraying(learner);
    }
  }

  private void panel(PracticeTask task, Form form) {
    desk.clock.set(days.panel(desk.clock.instant(), desk.chance));
    UUID card = task.coats() > 0 && task.unit().equals("clear") ? gunCard : null;
    written++;
    ScoreAttempt.Scored scored =
        panels.score(learner, task, form, card, chapter.submitKey(written), written == 1);
    finished = desk.clock.instant();
    desk.clock.pass(Duration.ofHours(3));
    if (!days.waitsForTheBench(desk.clock.instant()) && desk.chance.nextDouble() < 0.85) {
      grading.grade(staff.instructor(desk.chance), scored.attempt(), task);
    }
  }

  private void more(PracticeTask task) {
    for (int i = 0; i < MOST_EXTRA && !isEnough(); i++) {
      panel(task, new Form(PRACTISED, plan.fault()));
    }
  }

  /** All there for the examiner; or so late that the rest waits for the bench. */
  private boolean isEnough() {
    return days.waitsForTheBench(desk.clock.instant()) || isComplete();
  }

  private boolean isComplete() {
    return desk.skills.ofUnit(chapter.unit()).stream()
        .allMatch(s -> desk.decide.evidence(staff.examiner(), learner.id(), s.id()).isComplete());
  }
}
