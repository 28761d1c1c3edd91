package lapline.trade.film;

import java.util.List;
import java.util.OptionalInt;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import lapline.trade.measure.Verdict;

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
    Estimate scatter = new Estimate(mean, spread / Math.sqrt(count), count - 1);
    Estimate shared = Estimate.of(mean, offset);
    return Gum.combine(mean, List.of(new Part(1, scatter), new Part(1, shared)));
  }

  private static boolean settled(Estimate mean, TargetRange range) {
    return Verdict.of(Conformance.probability(mean, range)) != Verdict.DOUBTFUL;
  }
}
