package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import lapline.trade.measure.Estimate;

/**
 * What may have happened on a panel, drawn at random as often as its readings make it likely. Over
 * what a hand strays, the film under the rim of a fan is no straight line, and passes may lie in
 * several ways; a normal distribution about the likeliest fit knows less of the overlap than the
 * readings do, and says that it knows more.
 *
 * <p>Draws from the normal distributions about all likely fits are brought over to the film of
 * sharp-rimmed fans in stages, by weight and by small moves (Del Moral, Doucet and Jasra,
 * Sequential Monte Carlo samplers, J. R. Statist. Soc. B 68, 2006). The same draws every time.
 */
final class PanelDraws {
  /** With more readings drawing takes too long, and they make it nearly normal about each fit. */
  static final int MOST_READINGS = 48;

  /** Each stage leaves so many of the draws in effect. */
  private static final double ENOUGH = 0.5;

  /**
   * Twice as many state 2 to 4 % more: intervals of 60 % in two coats then hold in 95.2 of 100 with
   * 36 places instead of 93.6, and with 15 and written steps in 97.3 instead of 96.5.
   */
  private static final int MOVES = 4;

  private static final double LEAST_STAGE = 0.02;
  private static final int HALVINGS = 12;
  private static final double FIRST_STRIDE = 0.6;
  private static final double LEAST_STRIDE = 0.05;

  /** Of the moves, so many should be taken: between a fifth and a third is best. */
  private static final double TOO_BOLD = 0.2;

  private static final double TOO_TIMID = 0.35;

  private final List<AboutFit> fits;
  private final RandomGenerator chance = new SplittableRandom(1);
  private Draw[] draws;
  private double stride = FIRST_STRIDE;
  private double logEvidence;

  /**
   * @param logWeight ln of how likely it is by the readings, over the mean of all normal
   *     distributions
   * @param logOthers ln of that mean over the normal distribution about its own fit
   */
  private record Draw(AboutFit about, double[] point, double logWeight, double logOthers) {}

  private PanelDraws(List<AboutFit> fits) {
    this.fits = fits;
  }

  /**
   * 1 − step / fan width of the passes over the panel, over what may have happened.
   *
   * @param settled the likely fits of one plan with the same departures, 1 or more, the likeliest
   *     first, about which to draw; see {@link StrokeFit#settled()}
   * @param count how many to draw, 2 or more
   */
  static Estimate overlap(List<StrokeFit> settled, int count) {
    return of(settled, settled.get(0).birge(), count).overlap();
  }

  /**
   * ln of how likely the readings are over all that was possible before, against film that leaves
   * nothing; to compare for one plan or another, with the same scatter.
   *
   * @param settled as above
   * @param birge how much more than it should the film leaves, see {@link StrokeFit#birge()}
   */
  static double logEvidence(List<StrokeFit> settled, double birge, int count) {
    return of(settled, birge, count).logEvidence;
  }

  private static PanelDraws of(List<StrokeFit> settled, double birge, int count) {
    PanelDraws all = new PanelDraws(settled.stream().map(f -> new AboutFit(f, birge)).toList());
    all.draws = new Draw[count];
    for (int i = 0; i < count; i++) {
      AboutFit one = all.fits.get(i % all.fits.size());
      all.draws[i] = all.at(one, one.any(all.chance));
    }
    all.run();
    return all;
  }

  private Draw at(AboutFit about, double[] point) {
    double own = about.logDensity(point);
    double sum = 0;
    for (AboutFit fit : fits) {
      sum += fit == about ? 1 : Math.exp(fit.logDensity(point) - own);
    }
    double others = Math.log(sum / fits.size());
    return new Draw(about, point, about.logReadings(point) - own - others, others);
  }

  private void run() {
    for (double done = 0; done < 1; ) {
      double stage = stage(1 - done);
      resample(stage);
      done += stage;
      for (int k = 0; k < MOVES; k++) {
        move(done);
      }
    }
  }

  /** As much of the rest as leaves enough draws in effect. */
  private double stage(double rest) {
    if (effective(rest) >= ENOUGH) {
      return rest;
    }
    double least = 0;
    double most = rest;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (least + most) / 2;
      if (effective(middle) >= ENOUGH) {
        least = middle;
      } else {
        most = middle;
      }
    }
    return Math.min(rest, Math.max(least, LEAST_STAGE));
  }

  private double most() {
    return Arrays.stream(draws).mapToDouble(Draw::logWeight).max().orElseThrow();
  }

  private double[] weights(double power) {
    double most = most();
    return Arrays.stream(draws).mapToDouble(d -> Math.exp(power * (d.logWeight - most))).toArray();
  }

  /** Share of the draws (Kish 1965). */
  private double effective(double power) {
    double[] weights = weights(power);
    double sum = Arrays.stream(weights).sum();
    return sum * sum / StrokeFit.square(weights) / weights.length;
  }

  /** Each as often as it weighs, at even distances along all weights. */
  private void resample(double power) {
    double[] weights = weights(power);
    double each = Arrays.stream(weights).sum() / draws.length;
    logEvidence += power * most() + Math.log(each);
    Draw[] next = new Draw[draws.length];
    double at = chance.nextDouble() * each;
    double sum = weights[0];
    int from = 0;
    for (int i = 0; i < next.length; i++, at += each) {
      while (at > sum && from < draws.length - 1) {
        sum += weights[++from];
      }
      next[i] = draws[from];
    }
    draws = next;
  }

  /** Each to a place near by, or not, such that they stay as likely as they are (Metropolis). */
  private void move(double done) {
    int taken = 0;
    for (int i = 0; i < draws.length; i++) {
      Draw from = draws[i];
      Draw to = at(from.about, from.about.near(from.point, stride, chance));
      double gain = done * (to.logWeight - from.logWeight) + to.logOthers - from.logOthers;
      if (Math.log(chance.nextDouble()) < gain) {
        draws[i] = to;
        taken++;
      }
    }
    double share = taken / (double) draws.length;
    double bolder = share < TOO_BOLD ? 0.6 : share > TOO_TIMID ? 1.4 : 1;
    stride = Math.max(LEAST_STRIDE, Math.min(1, bolder * stride));
  }

  private Estimate overlap() {
    double[] values = Arrays.stream(draws).mapToDouble(d -> d.about.overlap(d.point)).toArray();
    double mean = Arrays.stream(values).average().orElseThrow();
    double square = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
    return Estimate.of(mean, Math.sqrt(square));
  }
}
