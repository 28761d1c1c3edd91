package lapline.trade.measure;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * How many standard deviations either side of the mean of a few readings hold a share of all that
 * could have been read, with a stated confidence.
 *
 * <p>For normal readings, exact (not the usual approximations): the confidence is integrated over
 * the mean and the spread that so many readings may show. Source: ISO 16269-6 (from memory for what
 * it covers), NIST/SEMATECH e-Handbook 7.2.6.3; accuracy 1e-6 of the factor.
 */
public final class ToleranceFactor {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final GaussIntegrator NODES = new GaussIntegratorFactory().legendre(64);
  private static final double FAR = 8;
  private static final double MOST_FACTOR = 1e4;

  private ToleranceFactor() {}

  /**
   * k of the interval mean ± k s.
   *
   * @param readings 2 or more
   * @param share of all that could be read which the interval is to hold, 0 to 1, ends left out
   * @param confidence that it does, 0 to 1, ends left out
   */
  public static double twoSided(int readings, double share, double confidence) {
    check(readings, share, confidence);
    ChiSquaredDistribution spread = ChiSquaredDistribution.of(readings - 1.0);
    double root = Math.sqrt(readings);
    return solve(
        confidence,
        k ->
            // both halves of the mean's error are alike
            2
                * integral(
                    0,
                    FAR,
                    z -> {
                      double reach = reach(z / root, share);
                      double least = (readings - 1) * reach * reach / (k * k);
                      return NORMAL.density(z) * spread.survivalProbability(least);
                    }));
  }

  /**
   * k of the limit mean + k s, or mean − k s.
   *
   * @param readings 2 or more
   * @param share of all that could be read which lies on this side of the limit, 0.5 to 1, 1 left
   *     out
   * @param confidence that it does, 0.5 to 1, 1 left out, so that the factor is never negative
   */
  public static double oneSided(int readings, double share, double confidence) {
    check(readings, share, confidence);
    Valid.between("share", share, 0.5, 1);
    Valid.between("confidence", confidence, 0.5, 1);
    ChiSquaredDistribution spread = ChiSquaredDistribution.of(readings - 1.0);
    double root = Math.sqrt(readings);
    double quantile = NORMAL.inverseCumulativeProbability(share);
    // a mean so far off that it holds the share whatever the spread; the rest has to reach for it
    double enough = Math.min(FAR, quantile * root);
    double anyway = NORMAL.survivalProbability(enough);
    return solve(
        confidence,
        k ->
            anyway
                + integral(
                    -FAR,
                    enough,
                    z -> {
                      double needed = (quantile - z / root) / k;
                      double least = (readings - 1) * needed * needed;
                      return NORMAL.density(z) * spread.survivalProbability(least);
                    }));
  }

  /** How far an interval about a point off the mean has to reach to hold the share. */
  private static double reach(double off, double share) {
    return new BrentSolver(1e-12)
        .solve(
            200,
            r ->
                NORMAL.cumulativeProbability(off + r)
                    - NORMAL.cumulativeProbability(off - r)
                    - share,
            0,
            off + 40);
  }

  private static double solve(double confidence, DoubleUnaryOperator atFactor) {
    return new BrentSolver(1e-10)
        .solve(200, k -> atFactor.applyAsDouble(k) - confidence, 1e-3, MOST_FACTOR);
  }

  private static double integral(double from, double to, DoubleUnaryOperator f) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    return half * NODES.integrate(x -> f.applyAsDouble(middle + half * x));
  }

  private static void check(int readings, double share, double confidence) {
    Valid.between("readings", readings, 2, Integer.MAX_VALUE);
    Valid.between("share", share, Double.MIN_VALUE, Math.nextDown(1.0));
    Valid.between("confidence", confidence, Double.MIN_VALUE, Math.nextDown(1.0));
  }
}
