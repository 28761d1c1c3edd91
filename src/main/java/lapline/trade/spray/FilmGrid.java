package lapline.trade.spray;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * The places of a flat rectangle at which a film is computed: the middles of equal cells, row by
 * row from below.
 *
 * @param left x of the left edge, metres, finite, as are the others
 * @param lower y of the lower edge, metres
 * @param right x of the right edge, metres, beyond left
 * @param upper y of the upper edge, metres, above lower
 * @param columns 1 to 10,000
 * @param rows 1 to 10,000
 */
public record FilmGrid(
    double left, double lower, double right, double upper, int columns, int rows) {

  public FilmGrid {
    Valid.finite("left", left);
    Valid.finite("lower", lower);
    Valid.finite("right", right);
    Valid.finite("upper", upper);
    if (!(right > left)) {
      throw new MeasureException("right", right, "beyond left (" + left + ")");
    }
    if (!(upper > lower)) {
      throw new MeasureException("upper", upper, "above lower (" + lower + ")");
    }
    Valid.between("columns", columns, 1, 10_000);
    Valid.between("rows", rows, 1, 10_000);
  }

  /**
   * A panel that begins at 0, 0.
   *
   * @param width metres, more than 0, as is the height
   * @param columns 1 to 10,000, as are the rows
   */
  public static FilmGrid ofPanel(double width, double height, int columns, int rows) {
    Valid.positive("width", width);
    Valid.positive("height", height);
    return new FilmGrid(0, 0, width, height, columns, rows);
  }

  /** Middle of a column, metres; columns count from 0. */
  double x(int column) {
    return left + (column + 0.5) / columns * (right - left);
  }

  /** Middle of a row, metres; rows count from 0. */
  double y(int row) {
    return lower + (row + 0.5) / rows * (upper - lower);
  }

  /** First row whose middle may lie at a height or above it. */
  int firstRowFrom(double height) {
    double row = Math.floor((height - lower) / (upper - lower) * rows - 1);
    return (int) Math.max(0, Math.min(rows, row));
  }

  /** One past the last row whose middle may lie at a height or below it. */
  int endRowAt(double height) {
    double row = Math.ceil((height - lower) / (upper - lower) * rows + 1);
    return (int) Math.max(0, Math.min(rows, row));
  }

  /** Area of one cell, m². */
  double cell() {
    return (right - left) / columns * ((upper - lower) / rows);
  }
}
