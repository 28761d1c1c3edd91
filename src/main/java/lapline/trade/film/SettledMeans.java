package lapline.trade.film;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/** All means that, at one uncertainty, are sure to be met or sure to be missed. */
final class SettledMeans {
  private static final double ACCURACY = 1e-9;

  /**
   * Further off than this in standard uncertainties everything is missed: 95 % of Student's t lie
   * below 6.4 even at one degree of freedom.
   */
  private static final double FAR = 10;

  private final List<TargetRange> ranges = new ArrayList<>();

  private SettledMeans() {}

  /**
   * @param like its uncertainty and degrees of freedom are those of all the means; its value is of
   *     no matter
   */
  static SettledMeans of(Estimate like, TargetRange range) {
    SettledMeans all = new SettledMeans();
    double middle = middle(like, range);
    double best = conformance(middle, like, range);
    double far = Math.max(FAR * like.standardUncertainty(), width(range));
    DoubleUnaryOperator at = value -> conformance(value, like, range);
    double below = range.least() - far;
    double above = range.most() + far;
    if (range.hasLeast()) {
      all.ranges.add(TargetRange.atMost(edge(at, 1 - Verdict.SURE, below, middle)));
    }
    if (range.hasMost()) {
      all.ranges.add(TargetRange.atLeast(edge(at, 1 - Verdict.SURE, above, middle)));
    }
    if (best >= Verdict.SURE) {
      double from = range.hasLeast() ? edge(at, Verdict.SURE, below, middle) : below;
      double to = range.hasMost() ? edge(at, Verdict.SURE, above, middle) : above;
      // both may be the middle, and rounding must not turn them round
      all.ranges.add(new TargetRange(Math.min(from, middle), Math.max(to, middle)));
    }
    return all;
  }

  private static double width(TargetRange range) {
    return range.hasLeast() && range.hasMost() ? range.most() - range.least() : 0;
  }

  /** Where a mean conforms most. */
  private static double middle(Estimate like, TargetRange range) {
    if (range.hasLeast() && range.hasMost()) {
      return (range.least() + range.most()) / 2;
    }
    double far = FAR * like.standardUncertainty();
    return range.hasLeast() ? range.least() + far : range.most() - far;
  }

  private static double conformance(double value, Estimate like, TargetRange range) {
    return Conformance.probability(
        new Estimate(value, like.standardUncertainty(), like.degreesOfFreedom()), range);
  }

  /**
   * Where, between far outside and the middle, a mean conforms this surely; the middle if never.
   */
  private static double edge(
      DoubleUnaryOperator conformance, double sure, double outside, double middle) {
    // in shares of the way, for the unit may be metres or micrometres
    UnivariateFunction excess =
        way -> conformance.applyAsDouble(outside + way * (middle - outside)) - sure;
    return excess.value(1) <= 0
        ? middle
        : outside + new BrentSolver(ACCURACY).solve(200, excess, 0, 1) * (middle - outside);
  }

  double probability(Estimate mean) {
    double sum = ranges.stream().mapToDouble(r -> Conformance.probability(mean, r)).sum();
    return Math.min(1, sum);
  }
}
