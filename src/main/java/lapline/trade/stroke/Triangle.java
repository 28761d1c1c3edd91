package lapline.trade.stroke;

import lapline.trade.measure.MeasureException;

/** The lower triangle L of a symmetric positive definite matrix A = L·Lᵀ (Cholesky). */
final class Triangle {
  private final double[][] rows;

  private Triangle(double[][] rows) {
    this.rows = rows;
  }

  /**
   * @param a n × n; only its lower half is read
   * @throws MeasureException where it is not positive definite
   */
  static Triangle of(double[][] a) {
    double[][] l = new double[a.length][];
    for (int i = 0; i < a.length; i++) {
      double[] row = new double[i + 1];
      for (int j = 0; j <= i; j++) {
        double rest = a[i][j] - dot(row, l[j] == null ? row : l[j], j);
        if (j < i) {
          row[j] = rest / l[j][j];
        } else if (rest > 0) {
          row[i] = Math.sqrt(rest);
        } else {
          throw new MeasureException("matrix", rest, "positive definite");
        }
      }
      l[i] = row;
    }
    return new Triangle(l);
  }

  /** Of the first so many; four sums side by side: one alone waits for each addition to end. */
  static double dot(double[] a, double[] b, int count) {
    double one = 0;
    double two = 0;
    double three = 0;
    double four = 0;
    int k = 0;
    for (; k < count - 3; k += 4) {
      one += a[k] * b[k];
      two += a[k + 1] * b[k + 1];
      three += a[k + 2] * b[k + 2];
      four += a[k + 3] * b[k + 3];
    }
    for (; k < count; k++) {
      one += a[k] * b[k];
    }
    return one + two + (three + four);
  }

  /** L⁻¹v. */
  double[] below(double[] v) {
    double[] z = v.clone();
    for (int i = 0; i < z.length; i++) {
      z[i] = (z[i] - dot(rows[i], z, i)) / rows[i][i];
    }
    return z;
  }

  /** (L·Lᵀ)⁻¹v. */
  double[] solve(double[] v) {
    return above(below(v));
  }

  /** (Lᵀ)⁻¹v. */
  double[] above(double[] v) {
    double[] z = v.clone();
    for (int i = z.length - 1; i >= 0; i--) {
      z[i] /= rows[i][i];
      for (int k = 0; k < i; k++) {
        z[k] -= rows[i][k] * z[i];
      }
    }
    return z;
  }

  /** L⁻¹ of many columns at once, each given as a row; in place. */
  void below(double[][] columns) {
    for (int c = 0; c < columns.length; c++) {
      columns[c] = below(columns[c]);
    }
  }

  /** ln |A|. */
  double logDeterminant() {
    double sum = 0;
    for (int i = 0; i < rows.length; i++) {
      sum += Math.log(rows[i][i]);
    }
    return 2 * sum;
  }

  int size() {
    return rows.length;
  }
}
