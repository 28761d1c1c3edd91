package lapline.trade.spray;

import lapline.trade.measure.Valid;

/** Paint spent beyond the panel because the trigger was pulled early or let go late. */
public final class Trigger {
  private Trigger() {}

  /**
   * Share of a stroke's paint that meets the panel: L / (L + lead + lag).
   *
   * @param length of the stroke on the panel, metres, more than 0
   * @param lead sprayed before the panel's edge, metres, 0 or more
   * @param lag sprayed after it, metres, 0 or more
   */
  public static double usefulShare(double length, double lead, double lag) {
    Valid.positive("length", length);
    Valid.notNegative("lead", lead);
    Valid.notNegative("lag", lag);
    return length / (length + lead + lag);
  }
}
