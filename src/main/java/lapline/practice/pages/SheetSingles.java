package lapline.practice.pages;

import java.util.List;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.SheetColumn;
import lapline.pages.drawing.TypeFace;

/** Boxes for what is read once on a panel, as many beside each other as have room. */
final class SheetSingles {
  private static final double COLUMN = 44;
  private static final int MOST_COLUMNS = 3;
  private static final double BOX = 17;
  private static final double BETWEEN = 3;
  private static final double ROW = 5.6;

  private final SheetColumn sheet;

  SheetSingles(SheetColumn sheet) {
    this.sheet = sheet;
  }

  void write(List<String> labels) {
    int columns = (int) Math.min(MOST_COLUMNS, sheet.width() / COLUMN);
    double wide = sheet.width() / columns;
    sheet.gap(1.2);
    for (int from = 0; from < labels.size(); from += columns) {
      line(labels.subList(from, Math.min(labels.size(), from + columns)), wide);
    }
  }

  /** What stands beside each other; as high as the longest label of them needs. */
  private void line(List<String> labels, double wide) {
    List<List<String>> wrapped =
        labels.stream().map(l -> TypeFace.wrap(l, sheet.text(), wide - BETWEEN - BOX - 1)).toList();
    double high = wrapped.stream().mapToDouble(l -> SheetLabel.high(sheet, l, ROW)).max().orElse(0);
    for (int i = 0; i < wrapped.size(); i++) {
      double x = sheet.left() + wide * i;
      SheetLabel.write(sheet, wrapped.get(i), x, high);
      double box = x + wide - BETWEEN - BOX;
      sheet.add(Shape.Surface.box(box, sheet.y(), BOX, high, Fill.NONE, Pen.FINE));
    }
    sheet.moveTo(sheet.y() + high);
    sheet.gap(0.8);
  }
}
