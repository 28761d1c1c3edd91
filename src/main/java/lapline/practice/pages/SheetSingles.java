package lapline.practice.pages;

import java.util.List;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.TypeFace;

/**
 * Boxes for what is read once on a panel, as many beside each other as have room: the words above
 * the box, the target beside it.
 */
final class SheetSingles {
  /** Narrowest sheet for one of them. */
  static final double LEAST = 42;

  private static final double BOX = 16;
  private static final double BETWEEN = 3;
  private static final double LEADING = 1.15;

  /** Longer words go on a second line before a box is put below the others. */
  private static final double WORDS = 30;

  private final SheetColumn sheet;

  /** What is read, and what it should be; the latter may be empty. */
  record Single(String label, String target) {}

  SheetSingles(SheetColumn sheet) {
    this.sheet = sheet;
  }

  void write(List<Single> singles) {
    if (singles.size() == 1 && isShort(singles.get(0))) {
      inLine(singles.get(0));
      return;
    }
    double least = singles.stream().mapToDouble(this::least).max().orElse(LEAST);
    int most = (int) Math.max(1, Math.floor((sheet.width() + BETWEEN) / (least + BETWEEN)));
    int lines = (singles.size() + most - 1) / most;
    int columns = (singles.size() + lines - 1) / lines;
    double wide = (sheet.width() + BETWEEN) / columns;
    for (int from = 0; from < singles.size(); from += columns) {
      line(singles.subList(from, Math.min(singles.size(), from + columns)), wide);
    }
  }

  private boolean isShort(Single single) {
    return wordsWide(single) + BOX + targetWide(single) < sheet.width();
  }

  private double wordsWide(Single single) {
    return TypeFace.width(single.label(), sheet.text()) + BETWEEN;
  }

  /** One alone has its words before its box. */
  private void inLine(Single single) {
    sheet.gap(0.8);
    double high = sheet.high(SheetTable.ROW);
    SheetLabel.write(sheet, List.of(single.label()), sheet.left(), high);
    box(single, sheet.left() + wordsWide(single), sheet.y());
    sheet.moveTo(sheet.y() + high);
    sheet.gap(0.8);
  }

  private double least(Single single) {
    double words = Math.min(WORDS, TypeFace.width(single.label(), sheet.text()));
    return Math.max(words, BOX + targetWide(single));
  }

  private double targetWide(Single single) {
    return single.target().isEmpty()
        ? 0
        : 1 + TypeFace.BOLD * TypeFace.width(single.target(), sheet.text());
  }

  /** What stands beside each other; the words end level, just above their boxes. */
  private void line(List<Single> singles, double wide) {
    double size = sheet.text();
    List<List<String>> labels =
        singles.stream().map(s -> TypeFace.wrap(s.label(), size, wide - BETWEEN)).toList();
    int lines = labels.stream().mapToInt(List::size).max().orElse(1);
    double box = sheet.y() + (lines * LEADING + 0.3) * size;
    for (int i = 0; i < singles.size(); i++) {
      double x = sheet.left() + wide * i;
      words(labels.get(i), x, box - 0.3 * size);
      box(singles.get(i), x, box);
    }
    sheet.moveTo(box + sheet.high(SheetTable.ROW));
    sheet.gap(0.8);
  }

  private void words(List<String> lines, double x, double last) {
    for (int i = 0; i < lines.size(); i++) {
      double y = last - (lines.size() - 1 - i) * sheet.text() * LEADING;
      sheet.add(Words.of(x, y, sheet.text(), Align.START, lines.get(i)));
    }
  }

  private void box(Single single, double x, double y) {
    double high = sheet.high(SheetTable.ROW);
    sheet.add(Shape.Surface.box(x, y, BOX, high, Fill.NONE, Pen.FINE));
    if (!single.target().isEmpty()) {
      double base = y + high / 2 + sheet.text() * 0.35;
      sheet.add(Words.of(x + BOX + 1, base, sheet.text(), Align.START, single.target()).strong());
    }
  }
}
