package lapline.practice.pages;

import java.util.List;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.TypeFace;

/** Boxes for what is read once on a panel, as many beside each other as have room. */
final class SheetSingles {
  private static final double COLUMN = 44;
  private static final int MOST_COLUMNS = 3;
  private static final double BOX = 17;
  private static final double ROW = 6.4;

  private final SheetColumn sheet;

  SheetSingles(SheetColumn sheet) {
    this.sheet = sheet;
  }

  void write(List<String> labels) {
    int columns = (int) Math.min(MOST_COLUMNS, sheet.width() / COLUMN);
    double wide = sheet.width() / columns;
    for (int i = 0; i < labels.size(); i++) {
      if (i % columns == 0) {
        sheet.gap(i == 0 ? 1.2 : ROW);
      }
      single(labels.get(i), sheet.left() + wide * (i % columns), wide - 3);
    }
    sheet.gap(ROW);
  }

  private void single(String label, double x, double wide) {
    double high = sheet.high(ROW - 0.8);
    double room = wide - BOX - 1;
    double size = sheet.text() * 0.95;
    List<String> lines = TypeFace.wrap(label, size, room);
    if (lines.size() > 2) {
      size = sheet.text() * 0.8;
      lines = TypeFace.wrap(label, size, room);
    }
    double first = sheet.y() + high / 2 + size * 0.35 - (lines.size() - 1) * size * 0.55;
    for (int i = 0; i < lines.size(); i++) {
      sheet.add(Words.of(x, first + i * size * 1.1, size, Align.START, lines.get(i)));
    }
    sheet.add(Shape.Surface.box(x + wide - BOX, sheet.y(), BOX, high, Fill.NONE, Pen.FINE));
  }
}
