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

  private final double[][] shared;
  private final Triangle root;

  private HandScatter(double[][] shared, Triangle root) {
    this.shared = shared;
    this.root = root;
  }

  /** As the passes of this model lie with these parameters. */
  static HandScatter about(StrokeModel model, double[] parameters, List<FilmAt> readings) {
    int n = readings.size();
    StrokeModel.At at = model.at(parameters);
    double[][] shared = new double[n][];
    for (int i = 0; i < n; i++) {
      at.film(readings.get(i).x(), readings.get(i).y());
      shared[i] = byChance(model.plan(), at);
    }
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        covariance[i][j] = StrokeFit.dot(shared[i], shared[j]);
      }
      double u = readings.get(i).uncertainty();
      covariance[i][i] += u * u;
    }
    return new HandScatter(shared, Triangle.of(covariance));
  }

  /**
   * What chance does to the film at the place that was asked last: one standard deviation of each
   * step, then of the speed of each pass; metres.
   */
  static double[] byChance(PassPlan plan, StrokeModel.At at) {
    int passes = plan.passes();
    double[] by = new double[2 * passes];
    steps(plan, at.byHeight, by);
    for (int k = 0; k < passes; k++) {
      by[passes + k] = PASS_TO_PASS * at.ofPass[k];
    }
    return by;
  }

  /** How many times the film of a usual pass one of this speed leaves. */
  static double times(double chance) {
    return 1 + PASS_TO_PASS * chance;
  }

  /** The same to the mean step over the panel and all coats. */
  static double[] stepByChance(PassPlan plan) {
    double[] by = new double[2 * plan.passes()];
    int first = 0;
    for (PassPlan.Coat coat : plan.coats()) {
      int count = coat.centrelines().size();
      int[] over = coat.over(plan.height());
      double share = 1.0 / (over[1] - over[0]) / plan.coats().size();
      int middle = count / 2;
      for (int k = over[0]; k <= over[1]; k++) {
        // below the middle pass a step that is off moves passes up, and so closer to it
        if (k > middle && k > over[0]) {
          by[first + k] = share * coat.each().get(k - 1);
        } else if (k < middle && k < over[1]) {
          by[first + k] = -share * coat.each().get(k);
        }
      }
      first += count;
    }
    return by;
  }

  /**
   * The likeliest chance, in standard deviations of each step and of the speed of each pass.
   *
   * @param residual whitened
   */
  double[] likely(double[] residual) {
    double[] weight = root.above(residual);
    double[] chance = new double[shared[0].length];
    for (int i = 0; i < weight.length; i++) {
      for (int k = 0; k < chance.length; k++) {
        chance[k] += weight[i] * shared[i][k];
      }
    }
    return chance;
  }

  /** How far each pass lies from where it was written down by these steps, metres. */
  static double[] moves(PassPlan plan, double[] chance) {
    double[] by = new double[plan.passes()];
    int first = 0;
    for (PassPlan.Coat coat : plan.coats()) {
      int count = coat.centrelines().size();
      int middle = count / 2;
      for (int k = middle + 1; k < count; k++) {
        by[first + k] = by[first + k - 1] + coat.each().get(k - 1) * chance[first + k];
      }
      for (int k = middle - 1; k >= 0; k--) {
        by[first + k] = by[first + k + 1] + coat.each().get(k) * chance[first + k];
      }
      first += count;
    }
    return by;
  }

  /** What these steps do to each reading, metres. */
  double[] ofSteps(double[] chance) {
    double[] film = new double[shared.length];
    for (int i = 0; i < film.length; i++) {
      film[i] = ofSteps(shared[i], chance);
    }
    return film;
  }

  /** The same to anything that depends on chance in this way. */
  static double ofSteps(double[] byChance, double[] chance) {
    double sum = 0;
    for (int k = 0; k < byChance.length / 2; k++) {
      sum += byChance[k] * chance[k];
    }
    return sum;
  }

  /** Covariance with each reading of what depends on chance in this way, whitened. */
  double[] withReadings(double[] byChance) {
    double[] c = new double[shared.length];
    for (int i = 0; i < c.length; i++) {
      c[i] = StrokeFit.dot(shared[i], byChance);
    }
    return whitened(c);
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

  /** ln of the determinant of the covariance. */
  double logDeterminant() {
    return root.logDeterminant();
  }

  /** In units in which the scatter is 1 and independent from reading to reading. */
  double[] whitened(double[] values) {
    return root.below(values);
  }
}
