package lapline.trade.film;

import lapline.trade.measure.TargetRange;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How often so many readings of a normal film would show no larger a share inside than these do, if
 * the true share were a given one. Works in the range's own frame: off its middle, either way.
 */
final class ShareChance {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int NODES = 64;
  private static final int SEARCHES = 22;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final double count;
  private final double spread;
  private final TargetRange range;

  /** Half the range's width, and how far the mean lies off its middle; two limits only. */
  private final double half;

  private final double off;

  /** From the only limit to the mean, inwards; one limit only. */
  private final double room;

  /** Readings' spread over the film's, at the middles of so many equally likely parts. */
  private final double[] ratios;

  ShareChance(FilmReadings readings, TargetRange range) {
    this.count = readings.count();
    this.spread = readings.spread();
    this.range = range;
    double mean = readings.mean();
    this.half = (range.most() - range.least()) / 2;
    this.off = limits(range) == 2 ? Math.abs(mean - (range.least() + half)) : 0;
    this.room = range.hasLeast() ? mean - range.least() : range.most() - mean;
    this.ratios = ratios(readings.count());
  }

  static int limits(TargetRange range) {
    return (range.hasLeast() ? 1 : 0) + (range.hasMost() ? 1 : 0);
  }

  private static double[] ratios(int count) {
    ChiSquaredDistribution chi = ChiSquaredDistribution.of(count - 1.0);
    double[] found = new double[NODES];
    for (int i = 0; i < NODES; i++) {
      double quantile = chi.inverseCumulativeProbability((i + 0.5) / NODES);
      found[i] = Math.sqrt(quantile / (count - 1));
    }
    return found;
  }

  /** The share that mean and spread of the readings have inside. */
  double shown() {
    return limits(range) == 1
        ? NORMAL.cumulativeProbability(room / spread)
        : inside(off / spread, half / spread);
  }

  double ofShowingNoMore(double share) {
    double sum = 0;
    if (limits(range) == 1) {
      double quantile = NORMAL.inverseCumulativeProbability(share);
      for (double ratio : ratios) {
        sum += NORMAL.cumulativeProbability(Math.sqrt(count) * (ratio * room / spread - quantile));
      }
      return sum / NODES;
    }
    double sigma = likeliestSpread(share);
    double truth = Math.max(0, reach(share, half / sigma)) * sigma;
    double shown = shown();
    double error = sigma / Math.sqrt(count);
    for (double ratio : ratios) {
      double seen = ratio * sigma;
      double reach = reach(shown, half / seen) * seen;
      sum +=
          reach < 0
              ? 1
              : NORMAL.survivalProbability((reach - truth) / error)
                  + NORMAL.cumulativeProbability((-reach - truth) / error);
    }
    return sum / NODES;
  }

  /** The spread that makes the readings likeliest among all films with this share inside. */
  private double likeliestSpread(double share) {
    double widest = half / NORMAL.inverseCumulativeProbability((1 + share) / 2);
    double low = Math.max(widest * 1e-3, Math.min(widest / 2, spread / 5));
    double high = widest;
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = unlikelihood(share, left);
    double atRight = unlikelihood(share, right);
    for (int i = 0; i < SEARCHES; i++) {
      if (atLeft < atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = unlikelihood(share, left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = unlikelihood(share, right);
      }
    }
    double found = (low + high) / 2;
    return unlikelihood(share, widest) < unlikelihood(share, found) ? widest : found;
  }

  private double unlikelihood(double share, double sigma) {
    double away = off - Math.max(0, reach(share, half / sigma)) * sigma;
    double squares = (count - 1) * spread * spread + count * away * away;
    return count * Math.log(sigma) + squares / (2 * sigma * sigma);
  }

  /**
   * How far off the middle a mean may lie that still has the share inside; all in film spreads.
   *
   * @return −1 where not even a mean in the middle has it
   */
  private static double reach(double share, double half) {
    if (1 - 2 * NORMAL.survivalProbability(half) < share) {
      return -1;
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

  private static double inside(double off, double half) {
    return NORMAL.cumulativeProbability(half - off) - NORMAL.cumulativeProbability(-half - off);
  }
}
