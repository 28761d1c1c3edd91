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

  /** From the task sheet to the score, and then to the bench. */
  private static final Duration A_PANEL = Duration.ofHours(5);

  /** So long a panel waits for an instructor. */
  private static final Duration BENCH = Duration.ofDays(3);

  private final DemoDesk desk;
  private final DemoStaff staff;
  private final DemoChapter chapter;
  private final DemoPlan plan;
  private final Person learner;
  private final UUID gunCard;
  private final DemoPanels panels;
  private final DemoGrading grading;
  private final DemoSignOffs signOffs;

  private int written;

  /**
   * @param gunCard of the gun that every second apprentice takes to clear
   */
  DemoLearner(DemoDesk desk, DemoStaff staff, DemoChapter chapter, UUID gunCard) {
    this.desk = desk;
    this.staff = staff;
    this.chapter = chapter;
    this.plan = chapter.plan();
    this.learner = staff.apprentice(plan.number());
    this.gunCard = plan.number() % 2 == 0 ? gunCard : null;
    this.panels = new DemoPanels(desk);
    this.grading = new DemoGrading(desk);
    this.signOffs = new DemoSignOffs(desk, staff.examiner());
  }

  /** Lesson, panels, exam and, where planned, the decision; then what is left lying today. */
  void study(Instant now) {
    begin(now);
    List<PracticeTask> tasks = desk.tasks.ofUnit(chapter.unit());
    DemoLessons lessons = new DemoLessons(desk);
    lessons.read(learner, chapter.unit());
    List<Form> forms = plan.forms(chapter.number(), desk.chance);
    for (int i = 0; i < forms.size(); i++) {
      // who is stuck stays with the unit's first task; the others go through all of them
      int task = plan.stuck(chapter.number()) ? 0 : i * tasks.size() / forms.size();
      panel(tasks.get(task), forms.get(i), now);
    }
    if (forms.size() >= ENOUGH) {
      lessons.pass(learner, chapter.unit(), (plan.number() + chapter.number()) % 4 == 3);
      more(tasks.get(tasks.size() - 1), now);
    }
    if (chapter.isSigned()) {
      desk.clock.pass(Duration.ofHours(20));
      signOffs.decide(learner, chapter.unit());
    }
    if (chapter.isLatest()) {
      leave(tasks.get(0), now);
    }
  }

  /** Who worked yesterday has a panel half written down today; one sign-off is suspended. */
  private void leave(PracticeTask task, Instant now) {
    if (plan.ended() < 2) {
      desk.clock.set(now.minus(Duration.ofHours(2)));
      panels.leaveDraft(learner, task, new Form(0.3, plan.fault()));
    }
    if (plan.suspended()) {
      desk.clock.set(now.minus(Duration.ofDays(5)));
      signOffs.suspend(learner, chapter.unit());
    }
  }

  /** Units lie so that the last panel of the last one was done when the plan says. */
  private void begin(Instant now) {
    int after = plan.panels().stream().skip(chapter.number()).mapToInt(Integer::intValue).sum();
    Duration before = plan.between().multipliedBy(after).plus(Duration.ofDays(plan.ended()));
    desk.clock.set(now.minus(before).minus(Duration.ofHours(2)));
  }

  private void panel(PracticeTask task, Form form, Instant now) {
    Instant began = inShopHours(now);
    desk.clock.set(began);
    UUID card = task.coats() > 0 && task.unit().equals("clear") ? gunCard : null;
    written++;
    ScoreAttempt.Scored scored =
        panels.score(learner, task, form, card, chapter.submitKey(written), written == 1);
    desk.clock.pass(Duration.ofHours(3));
    boolean waits = desk.clock.instant().isAfter(now.minus(BENCH));
    if (!waits && desk.chance.nextDouble() < 0.85) {
      grading.grade(staff.instructor(desk.chance), scored.attempt(), task);
    }
    desk.clock.set(began.plus(plan.between().multipliedBy(9).dividedBy(10)));
  }

  private void more(PracticeTask task, Instant now) {
    for (int i = 0; i < MOST_EXTRA && !isEnough(now); i++) {
      Instant began = inShopHours(now);
      panel(task, new Form(0.02, plan.fault()), now);
      desk.clock.set(began.plus(Duration.ofHours(5)));
    }
  }

  /** Nothing is begun that could not be finished by now. */
  private Instant inShopHours(Instant now) {
    Instant wanted = desk.clock.instant();
    Instant open = new ShopHours(learner.zone()).next(wanted, desk.chance);
    return open.isBefore(now.minus(A_PANEL)) ? open : wanted;
  }

  /** All there for the examiner; or so late that the rest waits for the bench. */
  private boolean isEnough(Instant now) {
    boolean late = desk.clock.instant().isAfter(now.minus(BENCH));
    return late || isComplete();
  }

  private boolean isComplete() {
    return desk.skills.ofUnit(chapter.unit()).stream()
        .allMatch(s -> desk.decide.evidence(staff.examiner(), learner.id(), s.id()).isComplete());
  }
}
