package lapline.practice.pages;

import java.util.List;
import lapline.pages.drawing.QrCode;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Field;
import lapline.practice.PracticeTask.Section;

/** What stands on a task sheet beside its boxes: head, code, what to do, panel, targets. */
final class SheetParts {
  static final double QR = 27;

  /** Room for the panel's height, and more of it for each place, up to the highest. */
  private static final double LOW = 28;

  private static final double EACH_PLACE = 4;
  private static final double HIGHEST = 50;

  /** How much wider strong words run. */
  private static final double BOLD = 1.06;

  /** Numbers of the places, so that the names of areas, a tenth smaller, are 8 pt. */
  private static final double PLACES = SheetColumn.EIGHT_POINTS / 0.9;

  private final PracticeTask task;
  private final TaskSheet.Head head;
  private final PhraseWriter words;
  private final CriterionWriter criteria;

  SheetParts(PracticeTask task, TaskSheet.Head head, PhraseWriter words, CriterionWriter criteria) {
    this.task = task;
    this.head = head;
    this.words = words;
    this.criteria = criteria;
  }

  /**
   * @param which page this is; empty where there is only one
   * @param whole with what the panel is for and what is changed this time
   */
  void head(SheetColumn top, String which, boolean whole) {
    top.gap(6);
    top.add(Words.of(top.left(), top.y(), top.high(6), Align.START, task.title()).strong());
    top.gap(2);
    String who = words.say("practice-sheet.who", head.person(), head.day());
    top.paragraph(which.isEmpty() ? who : who + " · " + which);
    if (whole) {
      top.gap(0.6);
      top.quiet(task.purpose());
    }
    if (whole && !head.changed().isBlank()) {
      top.gap(0.6);
      top.paragraph(words.say("practice-sheet.changed", head.changed()));
    }
  }

  void code(List<Shape> shapes, double x, double y) {
    shapes.add(QrCode.at(head.address(), x, y, QR));
    shapes.add(Words.of(x + QR / 2, y + QR + 4, 3.6, Align.MIDDLE, head.code()).strong());
  }

  void ready(SheetColumn left) {
    if (!task.prepare().isEmpty()) {
      left.heading(words.say("practice-sheet.prepare"));
      left.ticks(task.prepare());
    }
    if (!task.cautions().isEmpty()) {
      left.heading(words.say("practice-sheet.cautions"));
      left.cautions(task.cautions());
    }
  }

  void panel(SheetColumn right) {
    right.heading(words.say("practice-sheet.panel"));
    double high = Math.min(HIGHEST, LOW + EACH_PLACE * task.panel().places().size());
    PanelScale scale =
        PanelScale.fitting(
            task.panel(), right.left(), right.y() + 1, right.width(), right.high(high));
    PanelPlan plan = new PanelPlan(scale, PLACES, words);
    plan.features().forEach(right::add);
    plan.edge().forEach(right::add);
    plan.numbered().forEach(right::add);
    double below = scale.bottom() + right.high(4);
    plan.scaleBar(right.left(), below).forEach(right::add);
    right.add(
        Words.of(
                right.left() + right.width(),
                below + right.text() * 0.35,
                right.text(),
                Align.END,
                words.say(
                    "practice-sheet.panel-size",
                    words.spot(task.panel().width()),
                    words.spot(task.panel().height())))
            .in(Tone.FAINT));
    right.moveTo(below + right.high(1.5));
  }

  void targets(SheetColumn column) {
    column.heading(words.say("practice-sheet.targets"));
    task.criteria().forEach(c -> target(column, c.label(), criteria.target(c)));
  }

  /** The words wrap before they touch the figures. */
  private static void target(SheetColumn column, String what, String target) {
    double size = column.text();
    double room = column.width() - TypeFace.width(target, size) * BOLD - size;
    column.gap(0.5);
    double end = column.left() + column.width();
    double line = column.y() + size * 1.2;
    for (String words : TypeFace.wrap(what, size, room)) {
      column.moveTo(column.y() + size * 1.2);
      column.add(Words.of(column.left(), column.y(), size, Align.START, words));
    }
    column.add(Words.of(end, line, size, Align.END, target).strong());
  }

  /** What the dot at a box means, where there is such a box. */
  void needed(List<Section> sections, SheetColumn column) {
    if (sections.stream().flatMap(s -> s.fields().stream()).anyMatch(Field::required)) {
      column.gap(0.8);
      column.quiet(words.say("practice-sheet.needed"));
      column.gap(1);
    }
  }
}
