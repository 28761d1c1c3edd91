package lapline.practice;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;

/** What the times of day at which coats were begun say of the time between them. */
public final class CoatTimes {
  private static final double HALF_DAY = 12 * 3600;
  private static final double DAY = 2 * HALF_DAY;

  private CoatTimes() {}

  /**
   * Seconds from the start of one coat to that of a later one; negative where the times stand the
   * wrong way round. A step back of more than half a day is taken for midnight between the two.
   */
  public static Estimate between(Reading former, Reading later) {
    Estimate step = Gum.difference(later.estimate(), former.estimate());
    return step.value() < -HALF_DAY
        ? Estimate.of(step.value() + DAY, step.standardUncertainty())
        : step;
  }
}
