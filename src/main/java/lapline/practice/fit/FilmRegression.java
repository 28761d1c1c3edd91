package lapline.practice.fit;

import java.util.Arrays;

/**
 * Least squares of film on patterns, grown one pattern at a time so that dozens of rivals can be
 * tried on one panel.
 *
 * <p>Columns are orthonormalised by Gram–Schmidt, twice over, which keeps it as good as a QR
 * decomposition (Giraud and others, Numerische Mathematik 101, 2005). Values and columns come
 * whitened, see {@link SteadyHand}. Immutable.
 */
final class FilmRegression {
  /** A column with less than this share of its length left is not seen by these places. */
  private static final double UNSEEN = 1e-3;

  private final double[][] directions;
  private final double[][] triangle;
  private final double[] lengths;
  private final double[] residual;

  private FilmRegression(
      double[][] directions, double[][] triangle, double[] lengths, double[] residual) {
    this.directions = directions;
    this.triangle = triangle;
    this.lengths = lengths;
    this.residual = residual;
  }

  /** No column yet. */
  static FilmRegression of(double[] values) {
    return new FilmRegression(new double[0][], new double[0][], new double[0], values);
  }

  /** With one column more; null where the places cannot tell it from those already in. */
  FilmRegression with(double[] column) {
    double[] rest = column.clone();
    double whole = Math.sqrt(dot(rest, rest));
    double[] shares = new double[directions.length + 1];
    for (int round = 0; round < 2; round++) {
      for (int j = 0; j < directions.length; j++) {
        shares[j] += removeDirection(rest, directions[j]);
      }
    }
    double left = Math.sqrt(dot(rest, rest));
    if (!(left > UNSEEN * whole)) {
      return null;
    }
    shares[directions.length] = left;
    for (int i = 0; i < rest.length; i++) {
      rest[i] /= left;
    }
    double[] newResidual = residual.clone();
    double length = removeDirection(newResidual, rest);
    return new FilmRegression(
        grown(directions, rest), grown(triangle, shares), grown(lengths, length), newResidual);
  }

  /** With several columns more; null as above. */
  FilmRegression with(double[][] columns) {
    FilmRegression fit = this;
    for (double[] column : columns) {
      fit = fit == null ? null : fit.with(column);
    }
    return fit;
  }

  /** Sum of squared residuals; χ² where the scatter is as stated. */
  double chiSquared() {
    return dot(residual, residual);
  }

  int columns() {
    return lengths.length;
  }

  int readings() {
    return residual.length;
  }

  /** Coefficients of all columns, in the order they came in. */
  double[] coefficients() {
    double[] b = lengths.clone();
    for (int j = b.length - 1; j >= 0; j--) {
      b[j] /= triangle[j][j];
      for (int i = 0; i < j; i++) {
        b[i] -= triangle[j][i] * b[j];
      }
    }
    return b;
  }

  /**
   * Standard uncertainty of Σ cⱼ · coefficientⱼ; the stated scatter is scaled up, never down, to
   * what the residuals show (Birge ratio).
   *
   * @param c one factor for each column
   */
  double uncertaintyOf(double[] c) {
    // R'z = c, then c'(R'R)⁻¹c = z'z
    double[] z = new double[columns()];
    for (int j = 0; j < z.length; j++) {
      double sum = c[j];
      for (int i = 0; i < j; i++) {
        sum -= triangle[j][i] * z[i];
      }
      z[j] = sum / triangle[j][j];
    }
    double birge = Math.max(1, chiSquared() / Math.max(1, readings() - columns()));
    return Math.sqrt(dot(z, z) * birge);
  }

  private static double removeDirection(double[] from, double[] direction) {
    double length = dot(from, direction);
    for (int i = 0; i < from.length; i++) {
      from[i] -= length * direction[i];
    }
    return length;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double[][] grown(double[][] rows, double[] row) {
    double[][] more = Arrays.copyOf(rows, rows.length + 1);
    more[rows.length] = row;
    return more;
  }

  private static double[] grown(double[] values, double value) {
    double[] more = Arrays.copyOf(values, values.length + 1);
    more[values.length] = value;
    return more;
  }
}
