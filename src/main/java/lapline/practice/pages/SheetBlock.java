package lapline.practice.pages;

import java.util.function.Consumer;
import lapline.pages.drawing.SheetColumn;

/**
 * A part of the sheet that can be written into any column wide enough for it.
 *
 * @param least width it can be written in, in millimetres
 * @param most width it makes use of; in a wider column its right is left blank
 */
record SheetBlock(double least, double most, Consumer<SheetColumn> content) {

  static SheetBlock from(double least, Consumer<SheetColumn> content) {
    return new SheetBlock(least, Double.MAX_VALUE, content);
  }

  void write(SheetColumn column) {
    SheetColumn used = column.beside(column.left(), column.y(), Math.min(column.width(), most));
    content.accept(used);
    column.moveTo(used.y());
  }

  /** How much height it takes in a column of this width. */
  double high(double width, double scale) {
    SheetColumn trial = SheetColumn.trial(width, scale);
    write(trial);
    return trial.y();
  }
}
