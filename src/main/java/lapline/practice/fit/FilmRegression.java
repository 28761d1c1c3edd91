package lapline.practice.fit;

import java.util.Arrays;

/**
 * Weighted least squares of film on patterns, grown one pattern at a time so that dozens of rivals
 * can be tried on one panel.
 *
 * <p>Columns are orthonormalised by Gram–Schmidt, twice over, which keeps it as good as a QR
 * decomposition (Giraud and others, Numerische Mathematik 101, 2005). Everything is in units of
 * each reading's standard uncertainty. Immutable.
 */
final class FilmRegression {
  /** A column with less than this share of its length left is not seen by these places. */
  private static final double UNSEEN = 1e-3;

  private final double[] weights;
  private final double[][] directions;
  private final double[][] triangle;
  private final double[] lengths;
  private final double[] residual;

  private FilmRegression(
      double[] weights,
      double[][] directions,
      double[][] triangle,
      double[] lengths,
      double[] residual) {
    this.weights = weights;
    this.directions = directions;
    this.triangle = triangle;
    this.lengths = lengths;
    this.residual = residual;
  }

  /**
   * No column yet.
   *
   * @param uncertainty standard uncertainty of each value, > 0
   */
  static FilmRegression of(double[] values, double[] uncertainty) {
    double[] weights = Arrays.stream(uncertainty).map(u -> 1 / u).toArray();
    return new FilmRegression(
        weights, new double[0][], new double[0][], new double[0], times(values, weights));
  }

  /** With one column more; null where the places cannot tell it from those already in. */
  FilmRegression with(double[] column) {
    double[] rest = times(column, weights);
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
        weights,
        grown(directions, rest),
        grown(triangle, shares),
        grown(lengths, length),
        newResidual);
  }

  /** Weighted sum of squared residuals. */
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
    return solved(lengths);
  }

  /** Coefficients of the last columns only, cheaper. */
  double[] lastCoefficients(int count) {
    return Arrays.copyOfRange(solved(lengths), columns() - count, columns());
  }

  /**
   * Standard uncertainty of Σ cⱼ · coefficientⱼ, from the readings' own uncertainty.
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
    return Math.sqrt(dot(z, z));
  }

  private double[] solved(double[] right) {
    double[] b = right.clone();
    for (int j = b.length - 1; j >= 0; j--) {
      b[j] /= triangle[j][j];
      for (int i = 0; i < j; i++) {
        b[i] -= triangle[j][i] * b[j];
      }
    }
    return b;
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

  private static double[] times(double[] a, double[] b) {
    double[] product = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      product[i] = a[i] * b[i];
    }
    return product;
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
