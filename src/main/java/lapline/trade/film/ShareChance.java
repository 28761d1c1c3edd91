package lapline.trade.film;

import lapline.trade.measure.TargetRange;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How often so many readings of a normal film would show no larger a share inside than these do, if
 * the true share were a given one.
 */
final class ShareChance {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int NODES = 64;

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
        : FilmsOfShare.inside(off / spread, half / spread);
  }

  double ofShowingNoMore(double share) {
    return limits(range) == 1 ? withOneLimit(share) : withTwoLimits(share);
  }

  private double withOneLimit(double share) {
    double quantile = NORMAL.inverseCumulativeProbability(share);
    double sum = 0;
    for (double ratio : ratios) {
      sum += NORMAL.cumulativeProbability(Math.sqrt(count) * (ratio * room / spread - quantile));
    }
    return sum / NODES;
  }

  private double withTwoLimits(double share) {
    ShareLikelihood likelihood =
        new ShareLikelihood(new FilmsOfShare(share, half), count, off, spread);
    if (likelihood.isOutOfReach()) {
      return likelihood.showsMore() ? 1 : 0;
    }
    double truth = likelihood.off();
    double error = likelihood.spread() / Math.sqrt(count);
    double[] seen = new double[NODES];
    for (int i = 0; i < NODES; i++) {
      seen[i] = ratios[i] * likelihood.spread();
    }
    double sum = 0;
    for (double least : likelihood.offOfNoMore(seen)) {
      sum +=
          NORMAL.survivalProbability((least - truth) / error)
              + NORMAL.cumulativeProbability((-least - truth) / error);
    }
    return sum / NODES;
  }
}
