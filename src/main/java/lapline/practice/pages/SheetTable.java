package lapline.practice.pages;

import java.util.Collections;
import java.util.List;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;

/** Boxes to write readings in: one row for each thing read, one column for each time it is read. */
final class SheetTable {
  private static final double LABEL = 46;
  private static final double USUAL = 17;
  private static final double BETWEEN_HEADS = 2;
  private static final double NARROWEST = 6.6;

  /** So many columns leave room to write three figures with a thick pencil. */
  private static final int COMFORTABLE = 16;

  private static final double ROW = 6.2;
  private static final double HEAD = 3.8;

  private final SheetColumn sheet;

  SheetTable(SheetColumn sheet) {
    this.sheet = sheet;
  }

  /**
   * One row.
   *
   * @param open whether there is something to write in each column
   */
  record Row(String label, List<Boolean> open) {

    boolean isAsked() {
      return open.contains(true);
    }

    Row repeated(int times) {
      return new Row(
          label, Collections.nCopies(times, open).stream().flatMap(List::stream).toList());
    }
  }

  /** Columns of one kind; on to the next line where the sheet is too narrow for all. */
  void write(String corner, List<String> heads, List<Row> rows) {
    int most = (int) Math.floor((sheet.width() - LABEL) / NARROWEST);
    for (int from = 0; from < heads.size(); from += most) {
      int to = Math.min(heads.size(), from + most);
      part(corner, heads.subList(from, to), cut(rows, from, to));
    }
  }

  /** The same columns for each group, such as the passes of each coat, side by side. */
  void grouped(List<String> groups, List<String> heads, List<Row> rows) {
    int beside = Math.max(1, COMFORTABLE / heads.size());
    for (int from = 0; from < groups.size(); from += beside) {
      List<String> some = groups.subList(from, Math.min(groups.size(), from + beside));
      List<String> all =
          Collections.nCopies(some.size(), heads).stream().flatMap(List::stream).toList();
      List<Row> wide = rows.stream().map(r -> r.repeated(some.size())).toList();
      double group = wide(all) * heads.size();
      titles(some, group);
      double top = sheet.y();
      part("", all, wide);
      between(some.size(), group, top + sheet.high(HEAD));
    }
  }

  private static List<Row> cut(List<Row> rows, int from, int to) {
    return rows.stream().map(r -> new Row(r.label(), r.open().subList(from, to))).toList();
  }

  /** As wide as a reading needs, or as the heads need, where there is room. */
  private double wide(List<String> heads) {
    double widest =
        heads.stream().mapToDouble(h -> TypeFace.width(h, sheet.text())).max().orElse(0);
    return Math.min(
        Math.max(USUAL, widest + BETWEEN_HEADS), (sheet.width() - LABEL) / heads.size());
  }

  private void titles(List<String> groups, double wide) {
    sheet.gap(HEAD * 0.8);
    for (int i = 0; i < groups.size(); i++) {
      double x = sheet.left() + LABEL + wide * (i + 0.5);
      sheet.add(Words.of(x, sheet.y(), sheet.text(), Align.MIDDLE, groups.get(i)).strong());
    }
  }

  private void between(int groups, double wide, double top) {
    for (int i = 1; i < groups; i++) {
      double x = sheet.left() + LABEL + wide * i;
      sheet.add(Shape.Line.of(x, top, x, sheet.y(), Pen.of(Tone.INK, 0.8)));
    }
  }

  private void part(String corner, List<String> heads, List<Row> rows) {
    double wide = wide(heads);
    double text = sheet.text();
    sheet.gap(HEAD);
    sheet.add(
        Words.of(sheet.left(), sheet.y() - sheet.high(0.8), text, Align.START, corner)
            .in(Tone.FAINT));
    for (int i = 0; i < heads.size(); i++) {
      double middle = sheet.left() + LABEL + wide * (i + 0.5);
      sheet.add(
          Words.of(middle, sheet.y() - sheet.high(0.8), text, Align.MIDDLE, heads.get(i))
              .in(Tone.FAINT));
    }
    rows.forEach(r -> row(r, wide));
  }

  private void row(Row row, double wide) {
    List<String> lines = TypeFace.wrap(row.label(), sheet.text(), LABEL - 1.5);
    double high = SheetLabel.high(sheet, lines, ROW);
    SheetLabel.write(sheet, lines, sheet.left(), high);
    for (int i = 0; i < row.open().size(); i++) {
      double x = sheet.left() + LABEL + wide * i;
      Fill fill = row.open().get(i) ? Fill.NONE : Fill.flat(Tone.LINE);
      sheet.add(Shape.Surface.box(x, sheet.y(), wide, high, fill, Pen.FINE));
    }
    sheet.moveTo(sheet.y() + high);
  }
}
