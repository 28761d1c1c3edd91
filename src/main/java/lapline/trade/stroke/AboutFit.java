package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What may have happened on a panel about one fit. A point is all that may be otherwise, in
 * standard deviations of what was known before: the parameters, then each step and the speed of
 * each pass. Near the fit the film is taken as a straight line of them, so that given the readings
 * they are normal.
 */
final class AboutFit {
  /**
   * So many times as unsure as they are the readings are taken to be, so that places beside the fit
   * are reached in which a fan of another width leaves much the same film.
   */
  private static final double LOOSELY = 3;

  private final StrokeModel written;
  private final List<FilmAt> readings;
  private final Priors priors;
  private final int parameters;

  /**
   * Standard uncertainty of each reading, and the larger one that the normal distribution takes.
   */
  private final double[] uncertainty;

  private final double[] loosely;

  private final double[][] slopes;

  /** Film of the straight line where nothing is otherwise than it was known. */
  private final double[] atNothing;

  private final Triangle root;
  private final double[] likeliest;
  private final double logEvidence;

  /**
   * @param fit settled, see {@link StrokeFit#settled()}
   * @param birge how much more than it should the fit leaves, see there
   */
  AboutFit(StrokeFit fit, double birge) {
    PassPlan plan = fit.model().plan();
    double[] p = fit.parameters();
    this.written = new StrokeModel(plan, fit.model().departures());
    this.readings = fit.readings();
    this.priors = Priors.of(written, fit.level());
    this.parameters = p.length;
    double[] centre = new double[parameters + 2 * plan.passes()];
    for (int j = 0; j < parameters; j++) {
      centre[j] = priors.off(p, j);
    }
    System.arraycopy(fit.chance(), 0, centre, parameters, plan.passes());
    double wider = Math.sqrt(birge);
    this.uncertainty = readings.stream().mapToDouble(r -> wider * r.uncertainty()).toArray();
    this.loosely = Arrays.stream(uncertainty).map(u -> LOOSELY * u).toArray();
    StrokeModel.At at = fit.model().at(p);
    this.atNothing = new double[readings.size()];
    this.slopes = new double[readings.size()][];
    for (int i = 0; i < slopes.length; i++) {
      double there = at.film(readings.get(i).x(), readings.get(i).y());
      slopes[i] = slopes(at);
      atNothing[i] = there - StrokeFit.dot(slopes[i], centre);
    }
    this.root = Triangle.of(covariance());
    this.likeliest = given(new double[slopes[0].length], new double[readings.size()]);
    double[] unlikely = root.below(off(new double[slopes[0].length]));
    double narrow = Arrays.stream(loosely).map(Math::log).sum() - 0.5 * root.logDeterminant();
    this.logEvidence = narrow - 0.5 * StrokeFit.square(unlikely);
  }

  private double[] slopes(StrokeModel.At at) {
    double[] by = HandScatter.byChance(written.plan(), at);
    double[] all = new double[parameters + by.length];
    for (int j = 0; j < parameters; j++) {
      all[j] = at.slopes[j] * priors.standardDeviation(j);
    }
    System.arraycopy(by, 0, all, parameters, by.length);
    return all;
  }

  private static void add(double[] what, double times, double[] to) {
    for (int j = 0; j < to.length; j++) {
      to[j] += times * what[j];
    }
  }

  /** Of the readings, before they were read. */
  private double[][] covariance() {
    double[][] a = new double[readings.size()][readings.size()];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k <= i; k++) {
        a[i][k] = StrokeFit.dot(slopes[i], slopes[k]);
      }
      a[i][i] += loosely[i] * loosely[i];
    }
    return a;
  }

  /** Readings less the film at a point, by the straight line. */
  private double[] off(double[] point) {
    double[] off = new double[atNothing.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = readings.get(i).film() - atNothing[i] - StrokeFit.dot(slopes[i], point);
    }
    return off;
  }

  /** A point as likely as the readings have it, by the straight line. */
  double[] any(RandomGenerator chance) {
    double[] before = new double[slopes[0].length];
    for (int j = 0; j < before.length; j++) {
      before[j] = chance.nextGaussian();
    }
    double[] noise = new double[readings.size()];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = loosely[i] * chance.nextGaussian();
    }
    return given(before, noise);
  }

  /**
   * What was possible before, and how the gauge would have erred, moved to what was read
   * (Matheron's rule; Journel and Huijbregts, Mining Geostatistics, 1978).
   */
  private double[] given(double[] before, double[] noise) {
    double[] off = off(before);
    add(noise, -1, off);
    double[] weight = root.solve(off);
    double[] point = before.clone();
    for (int i = 0; i < weight.length; i++) {
      add(slopes[i], weight[i], point);
    }
    return point;
  }

  /**
   * A point near another one, such that the way back is taken as often (preconditioned
   * Crank–Nicolson step; Cotter, Roberts, Stuart and White, Statistical Science 28, 2013).
   *
   * @param stride 0 to 1: as far off as any
   */
  double[] near(double[] point, double stride, RandomGenerator chance) {
    double keep = Math.sqrt(1 - stride * stride);
    double[] next = new double[point.length];
    add(likeliest, 1 - keep - stride, next);
    add(point, keep, next);
    add(any(chance), stride, next);
    return next;
  }

  /** ln of how likely a point is by the straight line, over how likely it was before. */
  double logDensity(double[] point) {
    return logLikelihood(off(point), loosely) - logEvidence;
  }

  /** ln of how likely the readings are if this happened, by a fan with a sharp rim. */
  double logReadings(double[] point) {
    double[] chance = Arrays.copyOfRange(point, parameters, point.length);
    SharpFilm there = new SharpFilm(written, parameters(point), chance);
    double[] off = new double[readings.size()];
    for (int i = 0; i < off.length; i++) {
      FilmAt r = readings.get(i);
      off[i] = r.film() - there.at(r.x(), r.y());
    }
    return logLikelihood(off, uncertainty);
  }

  private static double logLikelihood(double[] off, double[] uncertainty) {
    double sum = 0;
    for (int i = 0; i < off.length; i++) {
      double z = off[i] / uncertainty[i];
      sum += z * z;
    }
    return -sum / 2;
  }

  private double[] parameters(double[] point) {
    double[] p = new double[parameters];
    for (int j = 0; j < parameters; j++) {
      p[j] = priors.at(point[j], j);
    }
    written.bound(p);
    return p;
  }

  /** 1 − step / fan width, over the panel. */
  double overlap(double[] point) {
    PassPlan plan = written.plan();
    double[] by = HandScatter.stepByChance(plan);
    double step = plan.stepOverPanel();
    for (int k = 0; k < by.length; k++) {
      step += by[k] * point[parameters + k];
    }
    double[] p = parameters(point);
    double wider = Math.exp(p[StrokeModel.FAN] - p[StrokeModel.STEP]);
    return 1 - step / (plan.fanWidth().value() * wider);
  }
}
