package lapline.practice.pages;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import lapline.pages.drawing.QrCode;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.Tone;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Field;
import lapline.trade.measure.Dimension;

/** What stands on a task sheet beside its boxes: head, code, what to do, panel. */
final class SheetParts {
  static final double QR = 26;

  /** Phones want blank paper around the squares, four of them wide. */
  private static final double BLANK = 4;

  /** The same below them, where the line of a heading comes next. */
  static final double BELOW_QR = 1.4;

  /** A line of prose that an eye finds its way back from. */
  private static final double PROSE_LEAST = 52;

  private static final double PROSE_MOST = 125;

  /** Numbers of the places, so that the names of areas, a tenth smaller, are 8 pt. */
  private static final double PLACES = SheetColumn.EIGHT_POINTS / 0.9;

  /** A longer panel is drawn lower. */
  private static final double WIDEST_PANEL = 120;

  private static final double CODE_TEXT = 3.4;

  /** Room for the code to scan and the one to type. */
  static final double CODE = QR + 23;

  private final PracticeTask task;
  private final TaskSheet.Head head;
  private final PhraseWriter words;

  SheetParts(PracticeTask task, TaskSheet.Head head, PhraseWriter words) {
    this.task = task;
    this.head = head;
    this.words = words;
  }

  /** Whose panel, what it is for, what is changed this time, and how to read the sheet. */
  void head(SheetColumn top, String which) {
    shortHead(top, which);
    top.quiet(task.purpose());
    if (!head.changed().isBlank()) {
      top.paragraph(words.say("practice-sheet.changed", head.changed()));
    }
    top.gap(0.6);
    top.quiet(words.say("practice-sheet.bold") + (needsAny() ? needed() : "") + " " + units());
  }

  /**
   * The head of a further page.
   *
   * @param which page this is; empty where there is only one
   */
  void shortHead(SheetColumn top, String which) {
    top.gap(5.2);
    top.add(Words.of(top.left(), top.y(), top.high(6), Align.START, task.title()).strong());
    top.gap(1.6);
    String who = words.say("practice-sheet.who", head.person(), head.day());
    top.paragraph(which.isEmpty() ? who : who + " · " + which);
  }

  /** What the dot at a box means, where there is such a box. */
  private String needed() {
    return " " + words.say("practice-sheet.needed");
  }

  /** Which units a figure is in that has none beside it, as on the entry page. */
  private String units() {
    return words.say("practice-sheet.units." + words.system());
  }

  private boolean needsAny() {
    return task.sections().stream().flatMap(s -> s.fields().stream()).anyMatch(Field::required);
  }

  /** The code to scan, and beside it the one to type. */
  void code(List<Shape> shapes, double x, double y) {
    shapes.add(QrCode.at(head.address(), x, y, QR));
    shapes.add(Words.of(x - BLANK, y + QR, CODE_TEXT, Align.END, head.code()).strong());
  }

  Optional<SheetBlock> prepare() {
    return list("practice-sheet.prepare", task.prepare(), SheetColumn::ticks);
  }

  Optional<SheetBlock> cautions() {
    return list("practice-sheet.cautions", task.cautions(), SheetColumn::cautions);
  }

  private Optional<SheetBlock> list(
      String title, List<String> lines, BiConsumer<SheetColumn, List<String>> write) {
    SheetBlock block =
        new SheetBlock(
            PROSE_LEAST,
            PROSE_MOST,
            sheet -> {
              sheet.topic(words.say(title));
              sheet.gap(0.5);
              write.accept(sheet, lines.stream().map(words::words).toList());
            });
    return lines.isEmpty() ? Optional.empty() : Optional.of(block);
  }

  /**
   * The panel to scale.
   *
   * @param high room for it at the sheet's usual scale
   */
  SheetBlock panel(double high) {
    return SheetBlock.from(wide(high), sheet -> panel(sheet, high));
  }

  private double wide(double high) {
    return Math.min(WIDEST_PANEL, high * task.panel().width() / task.panel().height());
  }

  /** The same with the distances of its places from the edges below it. */
  SheetBlock panelWithPlaces(double high) {
    return SheetBlock.from(
        wide(high),
        sheet -> {
          panel(sheet, high);
          places(sheet);
        });
  }

  private void panel(SheetColumn sheet, double high) {
    sheet.topic(words.say("practice-sheet.panel"));
    PanelScale scale =
        PanelScale.fitting(
            task.panel(), sheet.left(), sheet.y() + 1.6, sheet.width(), sheet.high(high));
    PanelPlan plan = new PanelPlan(scale, PLACES, words);
    sheet.add(plan::features);
    sheet.add(plan::edge);
    sheet.add(plan::numbered);
    sheet.add(plan::spots);
    double below = scale.bottom() + sheet.high(3.6);
    plan.scaleBar(sheet.left(), below).forEach(sheet::add);
    sheet.add(
        Words.of(
                sheet.left() + sheet.width(),
                below + sheet.text() * 0.35,
                sheet.text(),
                Align.END,
                words.cutSize(task.panel().width(), task.panel().height()))
            .in(Tone.FAINT));
    sheet.moveTo(below + sheet.high(1.5));
  }

  /** Where each place lies; on a bare panel nobody finds it by the drawing alone. */
  private void places(SheetColumn sheet) {
    if (!task.panel().places().isEmpty()) {
      sheet.quiet(words.say("practice-sheet.places", words.unit(Dimension.LENGTH), places()));
    }
  }

  private String places() {
    return task.panel().places().stream()
        .map(
            p ->
                words.say(
                    "practice-sheet.places.one",
                    PanelOutline.nameOf(p.number()),
                    words.spotFigure(p.x()),
                    words.spotFigure(p.y())))
        .collect(Collectors.joining(", "));
  }
}
