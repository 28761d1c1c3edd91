package lapline.trade.film;

/** Comparisons with a limit of a plan, where a value on the limit keeps it. */
final class Limits {
  /** Far below what a gauge can show; only takes up the rounding of binary numbers. */
  private static final double ROUNDING = 1e-9;

  private Limits() {}

  static boolean notBelow(double value, double limit) {
    return value >= limit - ROUNDING * Math.abs(limit);
  }

  static boolean notAbove(double value, double limit) {
    return value <= limit + ROUNDING * Math.abs(limit);
  }
}
