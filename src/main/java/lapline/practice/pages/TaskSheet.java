package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.QrCode;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.Tone;
import lapline.practice.Criterion;
import lapline.practice.Measurand;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Field;
import lapline.trade.measure.Dimension;

/**
 * The one page an apprentice takes to the booth: what to prepare, what to beware of, the targets,
 * the panel with its numbered places, a box for every reading, and the code that opens the entry
 * page of this very panel. It always fits one sheet: type and rows shrink until it does.
 */
public final class TaskSheet {
  private static final double MARGIN = 11;
  private static final double GUTTER = 6;
  private static final double QR = 27;
  private static final double SMALLEST = 0.4;

  private final PracticeTask task;
  private final Head head;
  private final PhraseWriter words;
  private final SheetBoxes boxes;
  private final CriterionWriter criteria;

  /**
   * What stands at the head of the sheet.
   *
   * @param code the attempt's short code, for typing
   * @param address what the square code opens
   * @param changed the one thing changed this time; may be empty
   */
  public record Head(String person, String day, String code, String address, String changed) {}

  public TaskSheet(
      PracticeTask task,
      Function<String, Optional<Measurand>> measurands,
      Head head,
      PhraseWriter words) {
    this.task = task;
    this.head = head;
    this.words = words;
    this.criteria = new CriterionWriter(words, measurands);
    this.boxes = new SheetBoxes(task, id -> measurands.apply(id).orElseThrow(), words);
  }

  public String title() {
    return words.say("practice-sheet.title", task.title(), head.person());
  }

  public Drawing on(Paper paper) {
    double scale = scale(paper);
    List<Shape> shapes = new ArrayList<>();
    write(paper, scale, shapes);
    return new Drawing(
        "task-sheet",
        paper.width(),
        paper.height(),
        title(),
        words.say("practice-sheet.description", head.code()),
        shapes);
  }

  /** The largest type, at most full size, at which everything fits. */
  double scale(Paper paper) {
    double scale = 1;
    while (scale > SMALLEST && write(paper, scale, new ArrayList<>()) > paper.height() - MARGIN) {
      scale -= 0.02;
    }
    return scale;
  }

  private double write(Paper paper, double scale, List<Shape> shapes) {
    double width = paper.width() - 2 * MARGIN;
    SheetColumn top = new SheetColumn(shapes, MARGIN, MARGIN, width - QR - GUTTER, scale);
    head(top);
    code(shapes, MARGIN + width - QR, MARGIN);
    double half = (width - GUTTER) / 2;
    SheetColumn left = new SheetColumn(shapes, MARGIN, top.y(), half, scale);
    ready(left);
    double belowCode = Math.max(top.y(), MARGIN + QR + 5);
    SheetColumn right = new SheetColumn(shapes, MARGIN + half + GUTTER, belowCode, half, scale);
    panel(right);
    targets(shorter(left, right));
    int written = besideEachOther(left, right);
    SheetColumn rest = new SheetColumn(shapes, MARGIN, Math.max(left.y(), right.y()), width, scale);
    task.sections().stream().skip(written).forEach(s -> boxes.write(s, rest));
    return rest.y();
  }

  private static SheetColumn shorter(SheetColumn left, SheetColumn right) {
    return left.y() <= right.y() ? left : right;
  }

  /** The first sections fill up the shorter column; returns how many found room there. */
  private int besideEachOther(SheetColumn left, SheetColumn right) {
    int written = 0;
    for (PracticeTask.Section section : task.sections()) {
      SheetColumn column = shorter(left, right);
      SheetColumn trial = column.trial();
      boxes.write(section, trial);
      if (!boxes.isNarrow(section) || trial.y() > Math.max(left.y(), right.y())) {
        return written;
      }
      boxes.write(section, column);
      written++;
    }
    return written;
  }

  private void head(SheetColumn top) {
    top.gap(6);
    top.add(Words.of(top.left(), top.y(), top.high(6), Align.START, task.title()).strong());
    top.gap(2);
    top.paragraph(words.say("practice-sheet.who", head.person(), head.day()));
    top.gap(0.6);
    top.quiet(task.purpose());
    if (!head.changed().isBlank()) {
      top.gap(0.6);
      top.paragraph(words.say("practice-sheet.changed", head.changed()));
    }
  }

  private void code(List<Shape> shapes, double x, double y) {
    shapes.add(QrCode.at(head.address(), x, y, QR));
    shapes.add(Words.of(x + QR / 2, y + QR + 4, 3.6, Align.MIDDLE, head.code()).strong());
  }

  private void ready(SheetColumn left) {
    if (!task.prepare().isEmpty()) {
      left.heading(words.say("practice-sheet.prepare"));
      left.ticks(task.prepare());
    }
    if (!task.cautions().isEmpty()) {
      left.heading(words.say("practice-sheet.cautions"));
      left.cautions(task.cautions());
    }
  }

  private void panel(SheetColumn right) {
    right.heading(words.say("practice-sheet.panel"));
    PanelScale scale =
        PanelScale.fitting(
            task.panel(), right.left(), right.y() + 1, right.width(), right.high(58));
    PanelPlan plan = new PanelPlan(scale, Math.max(2.2, right.high(2.6)), words);
    plan.features().forEach(right::add);
    plan.edge().forEach(right::add);
    plan.numbered().forEach(right::add);
    double below = scale.bottom() + right.high(4);
    plan.scaleBar(right.left(), below).forEach(right::add);
    right.add(
        Words.of(
                right.left() + right.width(),
                below + right.text() * 0.35,
                right.text() * 0.9,
                Align.END,
                words.say(
                    "practice-sheet.panel-size",
                    words.quantity(task.panel().width(), Dimension.LENGTH),
                    words.quantity(task.panel().height(), Dimension.LENGTH)))
            .in(Tone.FAINT));
    right.moveTo(below + right.high(1.5));
  }

  private void targets(SheetColumn column) {
    column.heading(words.say("practice-sheet.targets"));
    for (Criterion c : task.criteria()) {
      column.gap(3.9);
      column.add(Words.of(column.left(), column.y(), column.text(), Align.START, c.label()));
      column.add(
          Words.of(
                  column.left() + column.width(),
                  column.y(),
                  column.text(),
                  Align.END,
                  criteria.target(c))
              .strong());
    }
    if (task.sections().stream().flatMap(s -> s.fields().stream()).anyMatch(Field::required)) {
      column.gap(0.8);
      column.quiet(words.say("practice-sheet.needed"));
    }
  }
}
