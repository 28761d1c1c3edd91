package lapline.grading.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lapline.grading.DefectMark;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.DefectKind;
import lapline.practice.pages.EntryDrawing;
import lapline.practice.pages.PhraseWriter;

/** The panel to scale with its defects, lettered in the order they were placed. */
public record DefectMap(EntryDrawing plan, List<Placed> marks) {

  /**
   * A defect on the drawing and in the list beside it.
   *
   * @param x millimetres from the drawing's left edge
   * @param y millimetres from the drawing's upper edge
   */
  public record Placed(
      String letter,
      String label,
      String looksLike,
      String where,
      String note,
      double x,
      double y) {}

  static DefectMap of(PracticeTask task, List<DefectMark> defects, PhraseWriter words) {
    List<Placed> marks = new ArrayList<>();
    for (DefectMark d : defects) {
      DefectKind kind = kind(task, d.kind());
      marks.add(
          new Placed(
              letter(marks.size()),
              kind.label(),
              words.words(kind.looksLike()),
              where(task.panel(), d, words),
              d.note(),
              d.x() * 1000,
              (task.panel().height() - d.y()) * 1000));
    }
    return new DefectMap(EntryDrawing.of(task.panel()), marks);
  }

  private static DefectKind kind(PracticeTask task, String id) {
    return task.defects().stream()
        .filter(k -> k.id().equals(id))
        .findFirst()
        .orElseGet(() -> new DefectKind(id, id, ""));
  }

  private static String where(PanelOutline panel, DefectMark d, PhraseWriter words) {
    String fromEdges = words.say("grading.defect.where", words.spot(d.x()), words.spot(d.y()));
    return panel.places().stream()
        .min(Comparator.comparingDouble(p -> Math.hypot(p.x() - d.x(), p.y() - d.y())))
        .map(p -> words.say("grading.defect.near", fromEdges, PanelOutline.nameOf(p.number())))
        .orElse(fromEdges);
  }

  /** A to Z, then AA, AB and on. */
  static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
