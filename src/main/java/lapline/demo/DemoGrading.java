package lapline.demo;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lapline.grading.DefectMark;
import lapline.grading.GradePanel;
import lapline.grading.Grading;
import lapline.people.Person;
import lapline.practice.Attempt;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.RubricItem;

/** Invented gradings: what an instructor sees on a panel at the bench. */
final class DemoGrading {
  private static final List<String> PRAISE =
      List.of("Even all over. Keep the pace.", "Good. Look once more at the lower edge.", "");
  private static final List<String> RETURN =
      List.of(
          "Do another one. Change only what the first finding says.",
          "Show me your set-up before you begin the next one.",
          "Your hand is fine, your order is not. Read the sheet aloud first.");

  private final DemoDesk desk;

  DemoGrading(DemoDesk desk) {
    this.desk = desk;
  }

  /** The eye mostly agrees with the numbers, which it does not have to. */
  void grade(Person instructor, Attempt attempt, PracticeTask task) {
    boolean good = attempt.outcome().accepted();
    Map<String, Integer> marks = new TreeMap<>();
    task.rubric().forEach(item -> marks.put(item.id(), mark(item, good)));
    var bench =
        new GradePanel.Bench(
            good ? Grading.Decision.ACCEPTED : Grading.Decision.RETURNED,
            oneOf(good ? PRAISE : RETURN),
            marks,
            defects(task, good ? 1 : 3));
    List<GradePanel.Refusal> refusals = desk.grade.run(instructor, attempt.id(), bench);
    if (!refusals.isEmpty()) {
      throw new IllegalStateException("invented grading refused: " + refusals);
    }
  }

  private int mark(RubricItem item, boolean good) {
    List<Integer> marks = item.anchors().stream().map(PracticeTask.Anchor::mark).sorted().toList();
    int enough = Math.max(0, marks.indexOf(item.acceptedFrom()));
    int from = good ? enough : Math.max(0, enough - 1);
    int to = good ? marks.size() : enough + 1;
    return marks.get(from + desk.chance.nextInt(Math.max(1, to - from)));
  }

  private List<DefectMark> defects(PracticeTask task, int most) {
    if (task.defects().isEmpty() || task.panel().places().isEmpty()) {
      return List.of();
    }
    return desk.chance
        .ints(desk.chance.nextInt(most + 1), 0, task.defects().size())
        .mapToObj(kind -> defect(task, kind))
        .toList();
  }

  private DefectMark defect(PracticeTask task, int kind) {
    var place = oneOf(task.panel().places());
    return new DefectMark(task.defects().get(kind).id(), place.x(), place.y(), "");
  }

  private <T> T oneOf(List<T> some) {
    return some.get(desk.chance.nextInt(some.size()));
  }
}
