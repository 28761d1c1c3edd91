package lapline.trade.stroke;

import java.util.List;

/**
 * How readings scatter about the film of a steady hand: each by its own uncertainty, and together
 * where one pass lay a little higher or was a little faster than the others. No hand repeats a step
 * exactly, and that is no fault; forgetting it makes drifts and tilts of half of all even panels.
 */
final class HandScatter {
  /** Of the film of one pass, as a share of it, by its speed; course assumption. */
  private static final double PASS_TO_PASS = 0.03;

  private final Triangle root;

  private HandScatter(Triangle root) {
    this.root = root;
  }

  /** As the passes of this model lie with these parameters. */
  static HandScatter about(StrokeModel model, double[] parameters, List<FilmAt> readings) {
    int n = readings.size();
    StrokeModel.At at = model.at(parameters);
    int passes = model.plan().passes();
    double[][] shared = new double[n][2 * passes];
    for (int i = 0; i < n; i++) {
      at.film(readings.get(i).x(), readings.get(i).y());
      steps(model.plan(), at.byHeight, shared[i]);
      for (int k = 0; k < passes; k++) {
        shared[i][passes + k] = PASS_TO_PASS * at.ofPass[k];
      }
    }
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        covariance[i][j] = dot(shared[i], shared[j]);
      }
      double u = readings.get(i).uncertainty();
      covariance[i][i] += u * u;
    }
    return new HandScatter(Triangle.of(covariance));
  }

  /**
   * A step that is off moves all passes beyond it, counted from the middle one outwards, where the
   * coat's own shift holds it.
   */
  private static void steps(PassPlan plan, double[] byHeight, double[] into) {
    int first = 0;
    for (PassPlan.Coat coat : plan.coats()) {
      int count = coat.centrelines().size();
      int middle = count / 2;
      double sum = 0;
      for (int k = count - 1; k > middle; k--) {
        sum += byHeight[first + k];
        into[first + k] = coat.each().get(k - 1) * sum;
      }
      sum = 0;
      for (int k = 0; k < middle; k++) {
        sum += byHeight[first + k];
        into[first + k] = coat.each().get(k) * sum;
      }
      first += count;
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** ln of the determinant of the covariance. */
  double logDeterminant() {
    return root.logDeterminant();
  }

  /** In units in which the scatter is 1 and independent from reading to reading. */
  double[] whitened(double[] values) {
    return root.below(values);
  }
}
