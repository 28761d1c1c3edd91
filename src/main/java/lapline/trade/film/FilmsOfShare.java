package lapline.trade.film;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * All normal films of which a given share lies inside a range: for each spread how far off the
 * range's middle the mean lies, either way.
 *
 * @param share more than 0, below 1
 * @param half half the range's width
 */
record FilmsOfShare(double share, double half) {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** The largest spread that any of them has; its mean is in the middle. */
  double widest() {
    return half / NORMAL.inverseCumulativeProbability((1 + share) / 2);
  }

  /**
   * How far off the middle the mean lies at this spread, in the unit of the range; 0 where the film
   * is the widest one or wider.
   */
  double off(double spread) {
    return reach(half / spread) * spread;
  }

  /** The same with everything in film spreads. */
  private double reach(double half) {
    if (1 - 2 * NORMAL.survivalProbability(half) <= share) {
      return 0;
    }
    double low = 0;
    // the nearer limit alone allows this much; the other one takes a little off
    double high = Math.max(0, half - NORMAL.inverseCumulativeProbability(share));
    double at = high;
    for (int i = 0; i < 40; i++) {
      double over = inside(at, half) - share;
      low = over > 0 ? at : low;
      high = over > 0 ? high : at;
      double slope = NORMAL.density(half + at) - NORMAL.density(half - at);
      double next = at - over / slope;
      next = next > low && next < high ? next : (low + high) / 2;
      if (Math.abs(next - at) < 1e-9) {
        return next;
      }
      at = next;
    }
    return at;
  }

  /** The share inside when the mean lies so far off the middle; both in film spreads. */
  static double inside(double off, double half) {
    return NORMAL.cumulativeProbability(half - off) - NORMAL.cumulativeProbability(-half - off);
  }
}
