package lapline.trade.film;

import java.util.Arrays;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The share of a panel's area whose film lies inside a range, estimated from readings spread evenly
 * over it; not the share of the readings, which five readings can only put at whole fifths.
 *
 * <p>Model: the film over the panel is normal with mean μ and variance ω²; a reading adds the
 * gauge's own scatter τ, so readings vary by σ² = ω² + τ². With the prior 1/σ² the posterior is σ²
 * = (n−1)s²/χ², kept to σ² ≥ τ², and μ normal about the mean with variance σ²/n + offset². The
 * share at each (μ, ω) is Φ((U−μ)/ω) − Φ((L−μ)/ω). Taken at 128 × 128 nodes of equal probability.
 *
 * <p>Valid for readings not chosen for their look, and films that stray to both sides; a panel with
 * one thick patch is less well described. With a known τ of 0 and one limit, the probability below
 * is that of the one-sided tolerance limit of ISO 16269-6. Accuracy of the quadrature: 0.003 in a
 * share or a probability. Source: normal model with reference prior, Gelman and others, Bayesian
 * Data Analysis, 3.2 (from memory).
 */
public final class AreaShare {
  private static final int NODES = 128;
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double[] MEAN_STEPS = meanSteps();

  /** Shares at all nodes, rising. */
  private final double[] shares;

  private AreaShare(double[] shares) {
    this.shares = shares;
  }

  /**
   * @param readings at least 3, in metres
   * @param range metres
   * @param gauge its own scatter, taken off; {@link GaugeError#unknown()} takes nothing off
   */
  public static AreaShare of(FilmReadings readings, TargetRange range, GaugeError gauge) {
    if (readings.count() < 3) {
      throw new MeasureException("number of readings", readings.count(), "3 or more");
    }
    double[] shares = new double[NODES * NODES];
    double[] variances = variances(readings, gauge);
    for (int v = 0; v < NODES; v++) {
      double own = Math.pow(gauge.repeatability(), 2);
      double filmSpread = Math.sqrt(Math.max(0, variances[v] - own));
      double meanSpread = Math.hypot(Math.sqrt(variances[v] / readings.count()), gauge.offset());
      for (int m = 0; m < NODES; m++) {
        double mean = readings.mean() + MEAN_STEPS[m] * meanSpread;
        shares[v * NODES + m] = inside(range, mean, filmSpread);
      }
    }
    Arrays.sort(shares);
    return new AreaShare(shares);
  }

  /** Best estimate of the share: the mean of its posterior, 0 to 1. */
  public double best() {
    return Arrays.stream(shares).average().orElseThrow();
  }

  /** Lower end of the 95 % interval. */
  public double low() {
    return quantile(0.025);
  }

  /** Upper end of the 95 % interval. */
  public double high() {
    return quantile(0.975);
  }

  /**
   * Probability that the true share is at least a target.
   *
   * @param target 0 to 1
   */
  public double probabilityAtLeast(double target) {
    Valid.between("target", target, 0, 1);
    return Arrays.stream(shares).filter(s -> s >= target).count() / (double) shares.length;
  }

  private double quantile(double p) {
    return shares[(int) Math.min(shares.length - 1, p * shares.length)];
  }

  private static double inside(TargetRange range, double mean, double spread) {
    if (spread == 0) {
      return range.contains(mean) ? 1 : 0;
    }
    return NORMAL.cumulativeProbability((range.most() - mean) / spread)
        - NORMAL.cumulativeProbability((range.least() - mean) / spread);
  }

  /** Variances of equal posterior probability. */
  private static double[] variances(FilmReadings readings, GaugeError gauge) {
    int freedom = readings.count() - 1;
    double squares = freedom * Math.pow(readings.spread(), 2);
    double floor = Math.pow(gauge.repeatability(), 2);
    double[] variances = new double[NODES];
    if (squares == 0 && floor == 0) {
      return variances;
    }
    ChiSquaredDistribution chi = ChiSquaredDistribution.of(freedom);
    double mostProbable = floor == 0 ? 1 : chi.cumulativeProbability(squares / floor);
    for (int i = 0; i < NODES; i++) {
      double p = (i + 0.5) / NODES;
      // readings that agree better than the gauge can: only the tail of χ² near 0 is left, a power
      variances[i] =
          mostProbable < 1e-12
              ? floor * Math.pow(p, -2.0 / freedom)
              : squares / chi.inverseCumulativeProbability(p * mostProbable);
    }
    return variances;
  }

  private static double[] meanSteps() {
    double[] steps = new double[NODES];
    Arrays.setAll(steps, i -> NORMAL.inverseCumulativeProbability((i + 0.5) / NODES));
    return steps;
  }
}
