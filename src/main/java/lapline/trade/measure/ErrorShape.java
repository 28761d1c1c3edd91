package lapline.trade.measure;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The distribution of what a true value may be, in standard uncertainties from its best value:
 * normal, or Student's t where the uncertainty rests on few degrees of freedom.
 */
final class ErrorShape {
  static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Above this many degrees of freedom the two differ by less than 1e-4 in probability. */
  private static final double MANY = 1e4;

  private ErrorShape() {}

  static ContinuousDistribution of(double degreesOfFreedom) {
    return degreesOfFreedom > MANY ? NORMAL : TDistribution.of(degreesOfFreedom);
  }

  /** Probability between two places, keeping the digits of either tail. */
  static double between(ContinuousDistribution shape, double low, double high) {
    // in the upper tail the survival function keeps the digits that 1 − F would lose
    double share =
        low > 0
            ? shape.survivalProbability(low) - shape.survivalProbability(high)
            : shape.cumulativeProbability(high) - shape.cumulativeProbability(low);
    return Math.min(1, Math.max(0, share));
  }
}
