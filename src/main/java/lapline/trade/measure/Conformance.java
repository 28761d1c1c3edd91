package lapline.trade.measure;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The probability that a true value lies in its target range, and guarded limits (JCGM 106:2012,
 * clauses 7.3, 7.4 and 8.3).
 */
public final class Conformance {
  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  /** Above this many degrees of freedom Student's t is taken as normal; they differ by < 1e-4. */
  private static final double MANY = 1e4;

  private Conformance() {}

  /**
   * Probability that the true value conforms: normal, or Student's t where the degrees of freedom
   * of the uncertainty are few, so that three readings do not claim what thirty would.
   *
   * @param estimate in SI; an uncertainty of 0 gives 0 or 1, a value on a limit conforms
   * @return 0 to 1
   */
  public static double probability(Estimate estimate, TargetRange range) {
    double u = estimate.standardUncertainty();
    if (u == 0) {
      return range.contains(estimate.value()) ? 1 : 0;
    }
    ContinuousDistribution shape = shape(estimate.degreesOfFreedom());
    double low =
        range.hasLeast() ? (range.least() - estimate.value()) / u : Double.NEGATIVE_INFINITY;
    double high =
        range.hasMost() ? (range.most() - estimate.value()) / u : Double.POSITIVE_INFINITY;
    return Math.min(1, Math.max(0, between(shape, low, high)));
  }

  private static ContinuousDistribution shape(double degreesOfFreedom) {
    return degreesOfFreedom > MANY ? STANDARD : TDistribution.of(degreesOfFreedom);
  }

  private static double between(ContinuousDistribution shape, double low, double high) {
    // in the upper tail the survival function keeps the digits that 1 − F would lose
    return low > 0
        ? shape.survivalProbability(low) - shape.survivalProbability(high)
        : shape.cumulativeProbability(high) - shape.cumulativeProbability(low);
  }

  /** The guard band w for a single limit at which the conformance probability is {@code sure}. */
  public static double guardBand(double standardUncertainty, double sure) {
    return STANDARD.inverseCumulativeProbability(sure) * standardUncertainty;
  }
}
