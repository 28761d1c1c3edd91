package lapline.practice.pages;

import java.util.List;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;

/** The words before a box: as many lines as they need, level with the middle of the box. */
final class SheetLabel {
  private static final double LEADING = 1.1;

  private SheetLabel() {}

  /**
   * How high the box is: as high as its words where they take more room than it.
   *
   * @param row height of a box, before it grows with the sheet
   */
  static double high(SheetColumn sheet, List<String> lines, double row) {
    return Math.max(sheet.high(row), (lines.size() * LEADING + 0.2) * sheet.text());
  }

  static void write(SheetColumn sheet, List<String> lines, double x, double high) {
    double size = sheet.text();
    double first = sheet.y() + high / 2 + size * 0.35 - (lines.size() - 1) * size * LEADING / 2;
    for (int i = 0; i < lines.size(); i++) {
      double y = first + i * size * LEADING;
      sheet.add(Words.of(x, y, size, Align.START, lines.get(i)));
    }
  }
}
