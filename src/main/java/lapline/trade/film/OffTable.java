package lapline.trade.film;

/** The means of all films with a share, between two spreads, each asked for many times. */
final class OffTable {
  private static final int STEPS = 64;

  private final double from;
  private final double step;

  /** Squares, which are smooth up to the widest film, where the mean itself falls like a root. */
  private final double[] squares = new double[STEPS + 1];

  /**
   * A table of what {@link FilmsOfShare#off} finds.
   *
   * @param from logarithm of the least spread
   * @param to logarithm of the largest, more than {@code from}
   */
  OffTable(FilmsOfShare films, double from, double to) {
    this.from = from;
    this.step = (to - from) / STEPS;
    for (int i = 0; i <= STEPS; i++) {
      double off = films.off(Math.exp(from + i * step));
      squares[i] = off * off;
    }
  }

  /** By the cubic through the four nearest. */
  double off(double logOfSpread) {
    double at = (logOfSpread - from) / step;
    int i = Math.max(1, Math.min(STEPS - 2, (int) at));
    double t = at - i;
    double square =
        -t * (t - 1) * (t - 2) / 6 * squares[i - 1]
            + (t * t - 1) * (t - 2) / 2 * squares[i]
            - t * (t + 1) * (t - 2) / 2 * squares[i + 1]
            + t * (t * t - 1) / 6 * squares[i + 2];
    return Math.sqrt(Math.max(0, square));
  }
}
