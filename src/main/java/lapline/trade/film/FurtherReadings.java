package lapline.trade.film;

import java.util.OptionalInt;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.FirstOrder;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import lapline.trade.measure.Verdict;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How many more readings would settle a mean that lies too near a limit to call, if they go on as
 * they began.
 */
public final class FurtherReadings {
  private FurtherReadings() {}

  /**
   * Readings to add until the mean is met or missed, its value and spread staying as they are; 0
   * where it is settled already, empty where even {@code most} more would not do, as when the
   * gauge's own offset is what leaves it open.
   *
   * @param mean of the readings so far, in any unit
   * @param spread their sample standard deviation, 0 or more, same unit
   * @param count how many there are, 2 or more
   * @param offset standard uncertainty that all readings share, 0 or more; more of them do not
   *     lessen it
   * @param most how many more to consider, 0 to 1000
   */
  public static OptionalInt toSettle(
      double mean, double spread, int count, double offset, TargetRange range, int most) {
    Valid.finite("mean", mean);
    Valid.notNegative("spread", spread);
    Valid.between("count", count, 2, 100_000);
    Valid.notNegative("offset", offset);
    Valid.between("most", most, 0, 1000);
    for (int more = 0; more <= most; more++) {
      if (settled(mean(mean, spread, count + more, offset), range)) {
        return OptionalInt.of(more);
      }
    }
    return OptionalInt.empty();
  }

  private static Estimate mean(double mean, double spread, int count, double offset) {
    return FirstOrder.of(mean)
        .term(1, new Estimate(mean, spread / Math.sqrt(count), count - 1))
        .term(1, Estimate.of(mean, offset))
        .estimate();
  }

  private static boolean settled(Estimate mean, TargetRange range) {
    return Verdict.of(conformance(mean, range)) != Verdict.DOUBTFUL;
  }

  private static double conformance(Estimate mean, TargetRange range) {
    if (mean.standardUncertainty() == 0) {
      return range.contains(mean.value()) ? 1 : 0;
    }
    return below(mean, range.most()) - below(mean, range.least());
  }

  private static double below(Estimate mean, double limit) {
    double z = (limit - mean.value()) / mean.standardUncertainty();
    return Double.isInfinite(mean.degreesOfFreedom())
        ? NormalDistribution.of(0, 1).cumulativeProbability(z)
        : TDistribution.of(mean.degreesOfFreedom()).cumulativeProbability(z);
  }
}
