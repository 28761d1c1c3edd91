package lapline.trade.measure;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * How often the interval of two parts' sum or difference holds the truth, by integration instead of
 * simulation: each part's scatter is seen by so many degrees of freedom. Given the ratio of the
 * scatters that are seen, all that is left to chance is a Student's t with the degrees of freedom
 * of both.
 */
final class ExactCoverage {
  private static final double STEP = 0.125;
  private static final int FAR = 240;

  private final double one;
  private final double other;

  /** The factor for each logarithm of the ratio of the variances that are seen. */
  private final double[] factors = new double[2 * FAR + 1];

  private ExactCoverage(double one, double other) {
    this.one = one;
    this.other = other;
    for (int i = -FAR; i <= FAR; i++) {
      Estimate part = new Estimate(0, Math.exp(i * STEP / 2), one);
      Estimate rest = new Estimate(0, 1, other);
      Estimate both = FewReadings.joined(0, part, rest);
      factors[i + FAR] = Gum.coverageFactor(both.degreesOfFreedom());
    }
  }

  /** Least and most of what the intervals hold. */
  record Range(double least, double most) {}

  /**
   * Over true variances from far apart one way to far apart the other way.
   *
   * @param one degrees of freedom of the one part
   * @param other of the other; may be infinite
   */
  static Range of(double one, double other) {
    ExactCoverage coverage = new ExactCoverage(one, other);
    double least = 1;
    double most = 0;
    for (int i = -100; i <= 100; i += 2) {
      double held = coverage.at(i);
      least = Math.min(least, held);
      most = Math.max(most, held);
    }
    return new Range(least, most);
  }

  /** For true variances of the ratio e^(steps × STEP). */
  private double at(int steps) {
    ContinuousDistribution error = ErrorShape.of(one + other);
    DoubleUnaryOperator density = densityOfLog();
    double truth = Math.exp(steps * STEP);
    double sum = 0;
    double all = 0;
    for (int i = -FAR; i <= FAR; i++) {
      double chance = density.applyAsDouble((i - steps) * STEP);
      double reach = factors[i + FAR] * uncertainty(Math.exp(i * STEP), truth);
      sum += chance * (1 - 2 * error.survivalProbability(reach));
      all += chance;
    }
    return sum / all;
  }

  /** Of the ratio of what is seen to what is true, by its logarithm. */
  private DoubleUnaryOperator densityOfLog() {
    if (Double.isInfinite(other)) {
      ChiSquaredDistribution squares = ChiSquaredDistribution.of(one);
      return log -> squares.density(one * Math.exp(log)) * one * Math.exp(log);
    }
    FDistribution ratio = FDistribution.of(one, other);
    return log -> ratio.density(Math.exp(log)) * Math.exp(log);
  }

  /** The uncertainty seen, in units of the Student's t that is left to chance. */
  private double uncertainty(double seen, double truth) {
    if (Double.isInfinite(other)) {
      return Math.sqrt((seen + 1) / (truth + 1));
    }
    double squares = (one * seen / truth + other) / (one + other);
    return Math.sqrt((seen + 1) / (truth + 1) / squares);
  }
}
