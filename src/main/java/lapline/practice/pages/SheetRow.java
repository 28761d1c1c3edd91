package lapline.practice.pages;

import java.util.List;
import java.util.stream.Stream;
import lapline.pages.drawing.SheetColumn;

/** Blocks of the sheet beside each other and below each other, in one or more columns. */
record SheetRow(List<Stack> stacks) {
  /** Blank paper between two columns. */
  static final double GUTTER = 5;

  /** Blocks below each other in one column. */
  record Stack(List<SheetBlock> blocks, double width) {}

  /** With a further column at its left. */
  SheetRow after(Stack left) {
    return new SheetRow(Stream.concat(Stream.of(left), stacks.stream()).toList());
  }

  /** How much height it takes. */
  double high(double scale) {
    SheetColumn trial = SheetColumn.trial(0, scale);
    write(trial);
    return trial.y();
  }

  /** Writes it below what stands on the sheet and moves below it. */
  void write(SheetColumn sheet) {
    double left = sheet.left();
    double end = sheet.y();
    for (Stack stack : stacks) {
      SheetColumn column = sheet.beside(left, sheet.y(), stack.width());
      stack.blocks().forEach(b -> b.write(column));
      end = Math.max(end, column.y());
      left += stack.width() + GUTTER;
    }
    sheet.moveTo(end);
  }
}
