package lapline.trade.film;

import java.util.Arrays;

/**
 * How far readings of a film speak against all films with a given share inside: the signed root of
 * the restricted likelihood ratio, below 0 where they show less than the share. Restricted, that is
 * with the spread's likelihood of n − 1 readings, since the mean is not known either.
 *
 * <p>−2 ln of the likelihood of mean x and spread s under a film with mean μ and spread σ, less
 * that of its best, is n (x − μ)²/σ² + 2 (n − 1) g(σ/s) with g(u) = ln u + 1/(2 u²) − 1/2. So all
 * means that with one spread s speak no more against the share than these readings do are those
 * within a known distance of any of the share's films, and only their furthest has to be found.
 */
final class ShareLikelihood {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final int SEARCHES = 22;

  /** Beyond this many standard deviations nothing is told from none or all. */
  private static final double FAR = 7;

  /** Spreads tried for each spread seen, from one end to the other in −1 to 1. */
  private static final double[] TRIED = new double[24];

  static {
    // closer towards the ends, where the distance falls like a root
    Arrays.setAll(TRIED, i -> -Math.cos(Math.PI * i / (TRIED.length - 1)));
  }

  private final FilmsOfShare films;
  private final double count;
  private final double widest;
  private final double likeliest;
  private final double root;
  private final boolean more;

  /**
   * The root's value for readings.
   *
   * @param off of their mean from the middle of the range, 0 or more
   * @param spread more than 0
   */
  ShareLikelihood(FilmsOfShare films, double count, double off, double spread) {
    this.films = films;
    this.count = count;
    this.widest = films.widest();
    this.likeliest = likeliest(off, spread);
    this.root = Math.sqrt(Math.max(0, against(likeliest, off, spread)));
    this.more = FilmsOfShare.inside(off / spread, films.half() / spread) > films.share();
  }

  /** Whether the readings show more than the share. */
  boolean showsMore() {
    return more;
  }

  boolean isOutOfReach() {
    return root > FAR;
  }

  /** Spread of the share's film that the readings speak least against. */
  double spread() {
    return likeliest;
  }

  /** How far its mean lies off the middle. */
  double off() {
    return films.off(likeliest);
  }

  private double against(double sigma, double off, double spread) {
    double away = (off - films.off(sigma)) / sigma;
    return count * away * away + 2 * (count - 1) * misfit(Math.log(sigma / spread));
  }

  /** g of the logarithm of σ/s: 0 at 0, more on either side. */
  private static double misfit(double log) {
    return log + Math.expm1(-2 * log) / 2;
  }

  private double likeliest(double off, double spread) {
    double low = Math.max(widest * 1e-3, Math.min(widest / 2, spread / 5));
    double high = widest;
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = against(left, off, spread);
    double atRight = against(right, off, spread);
    for (int i = 0; i < SEARCHES; i++) {
      if (atLeft < atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = against(left, off, spread);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = against(right, off, spread);
      }
    }
    double found = (low + high) / 2;
    return against(widest, off, spread) < against(found, off, spread) ? widest : found;
  }

  /**
   * For each spread that readings may have, rising, the least distance of their mean from the
   * middle with which they would show no more than these do; 0 where any mean would.
   */
  double[] offOfNoMore(double[] spreads) {
    double allowed = root * root / (2 * (count - 1));
    double least = bound(allowed, -0.5 * Math.log(2 * allowed + 2) - 1, 0);
    double most = bound(allowed, 0, allowed + 1);
    double low = Math.log(spreads[0]) + least;
    double high = Math.min(Math.log(widest), Math.log(spreads[spreads.length - 1]) + most);
    OffTable table = new OffTable(films, Math.min(low, high - 1e-6), high);
    double[] found = new double[spreads.length];
    for (int i = 0; i < spreads.length; i++) {
      double log = Math.log(spreads[i]);
      boolean none = more ? spreads[i] >= widest : log + least >= Math.log(widest);
      found[i] = none ? 0 : furthest(table, log, least, Math.min(most, Math.log(widest) - log));
    }
    return found;
  }

  /** Where the misfit is just what is allowed, between two logarithms of σ/s. */
  private static double bound(double allowed, double from, double to) {
    double low = from;
    double high = to;
    boolean falling = misfit(from) > misfit(to);
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (misfit(middle) > allowed == falling) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private double furthest(OffTable table, double log, double least, double most) {
    double middle = (least + most) / 2;
    double reach = (most - least) / 2;
    double[] at = new double[TRIED.length];
    int best = 0;
    for (int i = 0; i < at.length; i++) {
      double ratio = middle + reach * TRIED[i];
      double sigma = Math.exp(log + ratio);
      double left = Math.max(0, root * root - 2 * (count - 1) * misfit(ratio));
      double away = sigma * Math.sqrt(left / count);
      at[i] = more ? -(table.off(log + ratio) - away) : table.off(log + ratio) + away;
      best = at[i] > at[best] ? i : best;
    }
    return Math.max(0, more ? -peak(at, best) : peak(at, best));
  }

  /** The top of the parabola through the largest value and its neighbours. */
  private static double peak(double[] at, int best) {
    if (best == 0 || best == at.length - 1) {
      return at[best];
    }
    double bend = at[best - 1] - 2 * at[best] + at[best + 1];
    double tilt = at[best + 1] - at[best - 1];
    return bend < 0 ? at[best] - tilt * tilt / (8 * bend) : at[best];
  }
}
