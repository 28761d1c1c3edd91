package lapline.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import lapline.people.Person;
import lapline.practice.PracticeTask;
import lapline.practice.ScoreAttempt;

/** One invented apprentice going through the course, unit after unit, as far as planned. */
final class DemoLearner {
  /** Panels beyond the plan to come to what a rule asks for; good days are no certainty. */
  private static final int MOST_EXTRA = 8;

  private static final Duration BENCH = Duration.ofDays(3);

  private final DemoDesk desk;
  private final DemoStaff staff;
  private final DemoPlan plan;
  private final Person learner;
  private final UUID gunCard;
  private final DemoPanels panels;
  private final DemoGrading grading;
  private final DemoSignOffs signOffs;

  DemoLearner(DemoDesk desk, DemoStaff staff, DemoPlan plan, Person learner, UUID gunCard) {
    this.desk = desk;
    this.staff = staff;
    this.plan = plan;
    this.learner = learner;
    this.gunCard = gunCard;
    this.panels = new DemoPanels(desk);
    this.grading = new DemoGrading(desk);
    this.signOffs = new DemoSignOffs(desk, staff.examiner());
  }

  /** Goes through one unit: lesson, panels, exam and, where planned, the decision. */
  void study(int unit, String id, Instant now) {
    List<PracticeTask> tasks = desk.tasks.ofUnit(id);
    if (tasks.isEmpty()) {
      return;
    }
    begin(unit, now);
    DemoLessons lessons = new DemoLessons(desk);
    lessons.read(learner, id);
    List<Form> forms = plan.forms(unit, desk.chance);
    for (int i = 0; i < forms.size(); i++) {
      panel(tasks.get(i * tasks.size() / forms.size()), forms.get(i), i == 0, now);
    }
    boolean finished = forms.size() >= 6;
    if (finished) {
      lessons.pass(learner, id, (plan.number() + unit) % 4 == 3);
      more(id, tasks.get(tasks.size() - 1), now);
    }
    if (unit < plan.signedUnits()) {
      desk.clock.pass(Duration.ofHours(20));
      signOffs.decide(learner, id);
    }
  }

  /** Leaves a panel half written down today. */
  void leaveDraft(String unit, Instant now) {
    desk.clock.set(now.minus(Duration.ofHours(2)));
    desk.tasks.ofUnit(unit).stream()
        .findFirst()
        .ifPresent(t -> panels.leaveDraft(learner, t, new Form(0.3, plan.fault())));
  }

  void suspend(String unit, Instant at) {
    desk.clock.set(at);
    signOffs.suspend(learner, unit);
  }

  /** Units lie so that the last panel of the last one was done when the plan says. */
  private void begin(int unit, Instant now) {
    int after = plan.panels().stream().skip(unit).mapToInt(Integer::intValue).sum();
    Duration before = plan.between().multipliedBy(after).plus(Duration.ofDays(plan.ended()));
    desk.clock.set(now.minus(before).minus(Duration.ofHours(2)));
  }

  private void panel(PracticeTask task, Form form, boolean first, Instant now) {
    Instant began = desk.clock.instant();
    UUID card = task.coats() > 0 && task.unit().equals("clear") ? gunCard : null;
    ScoreAttempt.Scored scored = panels.score(learner, task, form, card, first);
    desk.clock.pass(Duration.ofHours(3));
    boolean waits = desk.clock.instant().isAfter(now.minus(BENCH));
    if (!waits && desk.chance.nextDouble() < 0.85) {
      grading.grade(staff.instructor(desk.chance), scored.attempt(), task);
    }
    desk.clock.set(began.plus(plan.between().multipliedBy(9).dividedBy(10)));
  }

  private void more(String unit, PracticeTask task, Instant now) {
    for (int i = 0; i < MOST_EXTRA && !complete(unit); i++) {
      Instant began = desk.clock.instant();
      panel(task, new Form(0.02, plan.fault()), false, now);
      desk.clock.set(began.plus(Duration.ofHours(6)));
    }
  }

  private boolean complete(String unit) {
    return desk.skills.ofUnit(unit).stream()
        .allMatch(s -> desk.decide.evidence(staff.examiner(), learner.id(), s.id()).isComplete());
  }
}
