package lapline.trade.film;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;

/** All means that, at one uncertainty, are sure to be met or sure to be missed. */
final class SettledMeans {
  private static final int HALVINGS = 45;

  /** Further off than this in standard uncertainties everything is missed. */
  private static final double FAR = 1e3;

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
    if (range.hasLeast()) {
      double missed = edge(range.least() - FAR * scale(like, range), middle, like, range, false);
      all.ranges.add(TargetRange.atMost(missed));
    }
    if (range.hasMost()) {
      double missed = edge(range.most() + FAR * scale(like, range), middle, like, range, false);
      all.ranges.add(TargetRange.atLeast(missed));
    }
    if (best >= Verdict.SURE) {
      double from =
          range.hasLeast()
              ? edge(range.least() - FAR * scale(like, range), middle, like, range, true)
              : Double.NEGATIVE_INFINITY;
      double to =
          range.hasMost()
              ? edge(range.most() + FAR * scale(like, range), middle, like, range, true)
              : Double.POSITIVE_INFINITY;
      all.ranges.add(new TargetRange(from, to));
    }
    return all;
  }

  private static double scale(Estimate like, TargetRange range) {
    double width = range.hasLeast() && range.hasMost() ? range.most() - range.least() : 0;
    return Math.max(like.standardUncertainty(), width / FAR);
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

  /** Between far outside and the middle: where missed ends, or met begins. */
  private static double edge(
      double outside, double middle, Estimate like, TargetRange range, boolean met) {
    double low = outside;
    double high = middle;
    for (int i = 0; i < HALVINGS; i++) {
      double at = (low + high) / 2;
      double p = conformance(at, like, range);
      boolean inner = met ? p >= Verdict.SURE : p > 1 - Verdict.SURE;
      low = inner ? low : at;
      high = inner ? at : high;
    }
    return (low + high) / 2;
  }

  double probability(Estimate mean) {
    double sum = ranges.stream().mapToDouble(r -> Conformance.probability(mean, r)).sum();
    return Math.min(1, sum);
  }
}
