package lapline.practice.fit;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How readings scatter about a steady hand's film: each by its own gauge uncertainty, and all along
 * one pass together, since no hand repeats a pass exactly. Without the second part, twenty readings
 * along four rows would count as twenty witnesses to what only four passes did.
 */
final class SteadyHand {
  /** From pass to pass, as a share of the film; course assumption. */
  private static final double PASS_TO_PASS = 0.02;

  /** Over how much of a fan passes go together; a stroke's own half height. */
  private static final double REACH = 0.25;

  /** Beyond so many reaches nothing is shared. */
  private static final double FAR = 5;

  private final double[][] root;

  SteadyHand(PlacedFilm film, double fanWidth) {
    double hand = PASS_TO_PASS * film.mean;
    double[][] covariance = new double[film.size()][film.size()];
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j <= i; j++) {
        double apart = Math.abs(film.y[i] - film.y[j]) / (REACH * fanWidth);
        covariance[i][j] = apart > FAR ? 0 : hand * hand * Math.exp(-apart * apart / 2);
        covariance[j][i] = covariance[i][j];
      }
      covariance[i][i] += film.uncertainty[i] * film.uncertainty[i];
    }
    RealMatrix matrix = new Array2DRowRealMatrix(covariance, false);
    this.root = new CholeskyDecomposition(matrix, 1e-9, 0).getL().getData();
  }

  /**
   * Values in units in which the scatter is 1 and independent from reading to reading (generalised
   * least squares). Many columns at once, since that runs several times faster than one by one.
   */
  double[][] whitened(double[][] columns) {
    double[][] rows = transposed(columns, root.length);
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < i; j++) {
        subtract(rows[i], root[i][j], rows[j]);
      }
      for (int c = 0; c < columns.length; c++) {
        rows[i][c] /= root[i][i];
      }
    }
    return transposed(rows, columns.length);
  }

  private static void subtract(double[] from, double factor, double[] row) {
    for (int c = 0; c < from.length; c++) {
      from[c] -= factor * row[c];
    }
  }

  private static double[][] transposed(double[][] a, int width) {
    double[][] t = new double[width][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < width; j++) {
        t[j][i] = a[i][j];
      }
    }
    return t;
  }
}
