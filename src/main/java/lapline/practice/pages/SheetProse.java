package lapline.practice.pages;

import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.TypeFace;

/** Words that run on, some of them bold, on as many lines of a column as they take. */
final class SheetProse {
  private static final double LEADING = 1.2;
  private static final String BETWEEN = " · ";

  private final SheetColumn sheet;
  private final double end;
  private double x;
  private boolean begun;

  /**
   * @param x where it begins on the line that was written last
   */
  SheetProse(SheetColumn sheet, double x) {
    this.sheet = sheet;
    this.end = sheet.left() + sheet.width();
    this.x = x;
  }

  private void next() {
    sheet.moveTo(sheet.y() + sheet.text() * LEADING);
    x = sheet.left();
  }

  /** What and how much, which stay on one line where they can; a dot parts it from the last. */
  void pair(String what, String much) {
    double wide = wide(what + " ", false) + wide(much, true);
    if (x + wide(BETWEEN, false) + wide > end && x > sheet.left()) {
      next();
    } else if (begun) {
      write(BETWEEN, false);
    }
    write(what + " ", false);
    write(much, true);
    begun = true;
  }

  private void write(String text, boolean bold) {
    for (String word : text.split("(?<= )")) {
      if (x + wide(word.strip(), bold) > end && x > sheet.left()) {
        next();
      }
      if (!word.isBlank()) {
        Words words = Words.of(x, sheet.y(), sheet.text(), Align.START, word.strip());
        sheet.add(bold ? words.strong() : words);
      }
      x += wide(word, bold);
    }
  }

  private double wide(String text, boolean bold) {
    return TypeFace.width(text, sheet.text()) * (bold ? TypeFace.BOLD : 1);
  }
}
