package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;

/**
 * The likeliest parameters of a {@link StrokeModel} for the readings of one panel, by Gauss–Newton
 * steps with analytic slopes, damped where a step does not help (Levenberg 1944, Marquardt 1963),
 * and kept within each departure's bounds. What was written down enters as a normal prior on its
 * parameter.
 *
 * <p>Evidence by Laplace's approximation about the best point. The scatter is scaled up, never
 * down, to what the residuals show: for evidence to that of their bulk, for uncertainties to that
 * of all (Birge).
 */
final class StrokeFit {
  private static final int MOST_STEPS = 30;
  private static final double SETTLED = 1e-4;
  private static final double LEVEL_PRIOR = 1;

  private final StrokeModel model;
  private final List<FilmAt> readings;
  private final HandScatter scatter;
  private final double[] priorSd;
  private final double[] priorMean;

  private double[] parameters;
  private double[] residual;
  private double[][] columns;
  private double objective;
  private Triangle information;

  private StrokeFit(
      StrokeModel model, List<FilmAt> readings, HandScatter scatter, double[] start, double level) {
    this.model = model;
    this.readings = readings;
    this.scatter = scatter;
    this.priorSd = priors(model);
    this.priorMean = new double[model.parameters()];
    this.priorMean[StrokeModel.LEVEL] = level;
    this.parameters = start;
  }

  /**
   * @param start as many as the model's parameters
   * @param level ln of about the mean film, the middle of the level's wide prior
   */
  static StrokeFit of(
      StrokeModel model, List<FilmAt> readings, HandScatter scatter, double[] start, double level) {
    StrokeFit fit = new StrokeFit(model, readings, scatter, start.clone(), level);
    fit.run();
    return fit;
  }

  static double[] priors(StrokeModel model) {
    PassPlan plan = model.plan();
    double[] sd = new double[model.parameters()];
    sd[StrokeModel.LEVEL] = LEVEL_PRIOR;
    sd[StrokeModel.STEP] =
        plan.coats().stream().mapToDouble(PassPlan.Coat::all).max().orElseThrow();
    sd[StrokeModel.FAN] = plan.fanWidth().standardUncertainty() / plan.fanWidth().value();
    sd[StrokeModel.SHAPE] = Math.max(1e-3, plan.beta().standardUncertainty() / plan.beta().value());
    for (int c = 0; c < plan.coats().size(); c++) {
      sd[StrokeModel.SHIFT + c] = plan.coats().get(c).shift();
    }
    for (int i = 0; i < model.departures().size(); i++) {
      sd[model.first() + i] = model.departures().get(i).usual();
    }
    return sd;
  }

  private void run() {
    take(parameters);
    double damping = 1e-3;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] next = moved(damping);
      double before = objective;
      double[] kept = parameters;
      double reached = objectiveAt(next);
      if (reached <= before) {
        take(next);
        damping = Math.max(1e-9, damping / 10);
        if (before - reached < SETTLED) {
          break;
        }
      } else {
        parameters = kept;
        damping *= 10;
        if (damping > 1e6) {
          break;
        }
      }
    }
    information = Triangle.of(normal(0));
  }

  double objectiveAt(double[] p) {
    StrokeModel.At at = model.at(p);
    double[] r = new double[readings.size()];
    for (int i = 0; i < r.length; i++) {
      FilmAt reading = readings.get(i);
      r[i] = reading.film() - at.film(reading.x(), reading.y());
    }
    double[] white = scatter.whitened(r);
    return square(white) + fromPriors(p);
  }

  private void take(double[] p) {
    parameters = p;
    StrokeModel.At at = model.at(p);
    int n = readings.size();
    double[] r = new double[n];
    double[][] slopes = new double[p.length][n];
    for (int i = 0; i < n; i++) {
      FilmAt reading = readings.get(i);
      r[i] = reading.film() - at.film(reading.x(), reading.y());
      for (int j = 0; j < p.length; j++) {
        slopes[j][i] = at.slopes[j];
      }
    }
    residual = scatter.whitened(r);
    for (int j = 0; j < slopes.length; j++) {
      slopes[j] = scatter.whitened(slopes[j]);
    }
    columns = slopes;
    objective = square(residual) + fromPriors(p);
  }

  private double fromPriors(double[] p) {
    double sum = 0;
    for (int j = 0; j < p.length; j++) {
      double z = (p[j] - priorMean[j]) / priorSd[j];
      sum += z * z;
    }
    return sum;
  }

  private double[][] normal(double damping) {
    double[][] a = new double[columns.length][columns.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j <= i; j++) {
        a[i][j] = dot(columns[i], columns[j]);
        a[j][i] = a[i][j];
      }
      a[i][i] = (a[i][i] + 1 / (priorSd[i] * priorSd[i])) * (1 + damping);
    }
    return a;
  }

  private double[] moved(double damping) {
    double[] downhill = new double[columns.length];
    for (int j = 0; j < downhill.length; j++) {
      downhill[j] =
          dot(columns[j], residual) - (parameters[j] - priorMean[j]) / (priorSd[j] * priorSd[j]);
    }
    double[] by = Triangle.of(normal(damping)).solve(downhill);
    double[] next = parameters.clone();
    for (int j = 0; j < next.length; j++) {
      next[j] += by[j];
    }
    for (int i = 0; i < model.departures().size(); i++) {
      int j = model.first() + i;
      Departure d = model.departures().get(i);
      next[j] = Math.max(d.least(), Math.min(d.most(), next[j]));
    }
    return next;
  }

  StrokeModel model() {
    return model;
  }

  double[] parameters() {
    return parameters.clone();
  }

  /** Whitened readings less the film. */
  double[] residual() {
    return residual;
  }

  /** Whitened slopes, one array a parameter. */
  double[][] columns() {
    return columns;
  }

  /** Of data and priors together. */
  Triangle information() {
    return information;
  }

  HandScatter scatter() {
    return scatter;
  }

  /** Scatter of the residuals over what was stated, 1 or more. */
  double birge() {
    return Math.max(1, square(residual) / readings.size());
  }

  /**
   * The same as the bulk of the readings shows it, so that a few strays do not hide behind each
   * other: from the median of the residuals' sizes, which is 0.6745 of a normal standard deviation.
   */
  private double bulk() {
    double[] sizes = Arrays.stream(residual).map(Math::abs).sorted().toArray();
    int n = sizes.length;
    double middle = (sizes[(n - 1) / 2] + sizes[n / 2]) / 2 / 0.6745;
    return Math.max(1, middle * middle);
  }

  /** Standard uncertainty of a sum of parameters with these factors, scaled by {@link #birge()}. */
  double uncertaintyOf(double[] factors) {
    double[] z = information.below(factors);
    return Math.sqrt(square(z) * birge());
  }

  double uncertainty(int parameter) {
    double[] one = new double[parameters.length];
    one[parameter] = 1;
    return uncertaintyOf(one);
  }

  /**
   * What one column more would bring, to first order: exact where it enters the film linearly.
   *
   * @param column whitened slope of the film by the new parameter, at 0
   * @param usual standard deviation of its prior
   */
  Gain gain(double[] column, double usual) {
    double[] shared = new double[columns.length];
    double[] downhill = new double[columns.length];
    for (int j = 0; j < shared.length; j++) {
      shared[j] = dot(columns[j], column);
      downhill[j] =
          dot(columns[j], residual) - (parameters[j] - priorMean[j]) / (priorSd[j] * priorSd[j]);
    }
    double[] v = information.below(shared);
    double own = square(column) + 1 / (usual * usual) - square(v);
    double pull = dot(column, residual) - dot(v, information.below(downhill));
    double value = pull / own;
    double less = pull * value;
    double chi = square(residual);
    double narrowing = -0.5 * Math.log(own * usual * usual);
    return new Gain(
        value,
        likelihood(Math.max(0, chi - less)) - likelihood(chi) + narrowing,
        0.5 * less / bulk() + narrowing);
  }

  /** ln, with the scatter as large as the residuals show, where that is more than was stated. */
  private double likelihood(double chiSquared) {
    int n = readings.size();
    double scale = Math.max(1, chiSquared / n);
    return -0.5 * (n * Math.log(scale) + chiSquared / scale);
  }

  /**
   * @param value the likeliest value of the new parameter
   * @param evidence ln of how much better the readings are foretold with it than without, each with
   *     the scatter that it leaves
   * @param inBulk the same with the scatter that the bulk of the readings shows without it
   */
  record Gain(double value, double evidence, double inBulk) {}

  /** ln of how well the readings are foretold, up to a constant that all rivals for them share. */
  double logEvidence() {
    double priors = 0;
    for (double sd : priorSd) {
      priors -= Math.log(sd);
    }
    return likelihood(square(residual))
        - 0.5 * scatter.logDeterminant()
        - 0.5 * fromPriors(parameters)
        - 0.5 * information.logDeterminant()
        + priors;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  static double square(double[] a) {
    return dot(a, a);
  }
}
