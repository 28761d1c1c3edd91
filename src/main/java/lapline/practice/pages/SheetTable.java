package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
  /** A number of three figures, written with a pencil by a cold hand. */
  static final double NARROWEST = 11;

  static final double ROW = 6;
  private static final double COMFORTABLE = 13;
  private static final double USUAL = 17;
  private static final double LABEL = 26;
  private static final double BETWEEN_HEADS = 2;
  private static final double HEAD = 3.5;
  private static final double ABOVE_BOXES = 0.8;
  private static final double LEADING = 1.15;

  /** So many columns stay together; more may go on in a further line. */
  static final int TOGETHER = 12;

  private final SheetColumn sheet;

  SheetTable(SheetColumn sheet) {
    this.sheet = sheet;
  }

  /**
   * What stands above a column.
   *
   * @param group such as the coat, written once above all its passes; empty for none
   */
  record Head(String group, String text) {}

  /**
   * One row.
   *
   * @param open whether there is something to write in each column
   */
  record Row(String label, List<Boolean> open) {

    boolean isAsked() {
      return open.contains(true);
    }

    /** The same at a named place or after a named coat. */
    Row at(String where) {
      return new Row(label + ", " + where, open);
    }
  }

  /** Narrowest sheet for these columns, in whatever size of type. */
  static double least(List<Head> heads) {
    return LABEL
        + narrowest(heads, SheetColumn.TEXT * SheetPages.HIGHEST)
            * Math.min(TOGETHER, heads.size());
  }

  /** Narrowest column: for a reading, and for the longest word above one. */
  private static double narrowest(List<Head> heads, double text) {
    double widest =
        heads.stream()
            .flatMap(h -> Stream.of(h.text().split(" ")))
            .mapToDouble(word -> TypeFace.width(word, text))
            .max()
            .orElse(0);
    return Math.max(NARROWEST, widest + BETWEEN_HEADS / 2);
  }

  /** On to the next line where the sheet is too narrow for all columns; groups stay whole. */
  void write(String corner, List<Head> heads, List<Row> rows) {
    int band = band(heads);
    for (int from = 0; from < heads.size(); from += band) {
      int to = Math.min(heads.size(), from + band);
      band(corner, heads.subList(from, to), cut(rows, from, to));
    }
  }

  /** How many columns go on one line: about as many on each. */
  private int band(List<Head> heads) {
    double narrowest = narrowest(heads, sheet.text());
    int most = (int) Math.max(1, Math.floor((sheet.width() - LABEL) / narrowest));
    int group = (int) heads.stream().filter(h -> h.group().equals(heads.get(0).group())).count();
    int whole = group <= most ? group : 1;
    int parts = heads.size() / whole;
    int lines = (int) Math.ceil(parts / Math.floor((double) most / whole));
    return whole * (int) Math.ceil((double) parts / lines);
  }

  private static List<Row> cut(List<Row> rows, int from, int to) {
    return rows.stream().map(r -> new Row(r.label(), r.open().subList(from, to))).toList();
  }

  private void band(String corner, List<Head> heads, List<Row> rows) {
    double label = label(corner, heads, rows);
    double left = sheet.left() + label;
    double wide = wide(heads, label);
    titles(heads, left, wide);
    double top = sheet.y();
    heads(corner, heads, left, wide);
    rows.forEach(r -> row(r, label, wide));
    between(heads, left, wide, top);
  }

  /** As wide as the words are, unless that leaves too little for the boxes. */
  private double label(String corner, List<Head> heads, List<Row> rows) {
    double widest = TypeFace.width(corner, sheet.text());
    for (Row row : rows) {
      widest = Math.max(widest, TypeFace.width(row.label(), sheet.text()));
    }
    double narrowest = narrowest(heads, sheet.text());
    double left = sheet.width() - heads.size() * Math.max(COMFORTABLE, narrowest);
    if (widest > 2 * left) {
      // three lines of words make a high row, so the boxes give way
      left = sheet.width() - heads.size() * narrowest;
    }
    return Math.min(widest + BETWEEN_HEADS, Math.max(LABEL, left));
  }

  /** As wide as a reading needs, or as the heads need, where there is room. */
  private double wide(List<Head> heads, double label) {
    double widest =
        heads.stream().mapToDouble(h -> TypeFace.width(h.text(), sheet.text())).max().orElse(0);
    return Math.min(
        Math.max(sheet.high(USUAL), widest + BETWEEN_HEADS),
        (sheet.width() - label) / heads.size());
  }

  private void titles(List<Head> heads, double left, double wide) {
    if (heads.get(0).group().isEmpty()) {
      return;
    }
    sheet.gap(HEAD);
    for (int from : starts(heads)) {
      String group = heads.get(from).group();
      long columns = heads.stream().filter(h -> h.group().equals(group)).count();
      double middle = left + wide * (from + columns / 2.0);
      double y = sheet.y() - sheet.high(ABOVE_BOXES);
      sheet.add(Words.of(middle, y, sheet.text(), Align.MIDDLE, group).strong());
    }
  }

  private void between(List<Head> heads, double left, double wide, double top) {
    for (int from : starts(heads)) {
      if (from > 0) {
        double x = left + wide * from;
        sheet.add(Shape.Line.of(x, top, x, sheet.y(), Pen.of(Tone.INK, 0.8)));
      }
    }
  }

  /** The first column of each group. */
  private static List<Integer> starts(List<Head> heads) {
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      if (i == 0 || !heads.get(i).group().equals(heads.get(i - 1).group())) {
        starts.add(i);
      }
    }
    return starts;
  }

  /** On as many lines as they need, the last just above the boxes. */
  private void heads(String corner, List<Head> heads, double left, double wide) {
    List<List<String>> wrapped =
        heads.stream().map(h -> TypeFace.wrap(h.text(), sheet.text(), wide)).toList();
    int lines = wrapped.stream().mapToInt(List::size).max().orElse(1);
    sheet.gap(HEAD);
    sheet.moveTo(sheet.y() + (lines - 1) * sheet.text() * LEADING);
    head(sheet.left(), Align.START, List.of(corner));
    for (int i = 0; i < heads.size(); i++) {
      head(left + wide * (i + 0.5), Align.MIDDLE, wrapped.get(i));
    }
  }

  private void head(double x, Align align, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      double up = (lines.size() - 1 - i) * sheet.text() * LEADING + sheet.high(ABOVE_BOXES);
      sheet.add(Words.of(x, sheet.y() - up, sheet.text(), align, lines.get(i)).in(Tone.FAINT));
    }
  }

  private void row(Row row, double label, double wide) {
    List<String> lines = TypeFace.wrap(row.label(), sheet.text(), label - BETWEEN_HEADS / 2);
    double high = SheetLabel.high(sheet, lines, ROW);
    SheetLabel.write(sheet, lines, sheet.left(), high);
    for (int i = 0; i < row.open().size(); i++) {
      double x = sheet.left() + label + wide * i;
      Fill fill = row.open().get(i) ? Fill.NONE : Fill.flat(Tone.LINE);
      sheet.add(Shape.Surface.box(x, sheet.y(), wide, high, fill, Pen.FINE));
    }
    sheet.moveTo(sheet.y() + high);
  }
}
