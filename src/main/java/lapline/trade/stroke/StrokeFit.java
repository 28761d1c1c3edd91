package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;
import lapline.trade.measure.Estimate;

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
  private static final double SETTLED = 1e-3;

  /** The same about passes that move once more: the step after it would gain far less still. */
  private static final double SETTLED_ABOUT = 0.05;

  private static final double FIRST_DAMPING = 1e-3;
  private static final double MOST_DAMPING = 1e6;
  private static final int SETTLING = 2;

  private final StrokeModel model;
  private final List<FilmAt> readings;
  private final HandScatter scatter;
  private final Priors priors;

  private double[] parameters;
  private double[] residual;
  private double[][] columns;
  private double objective;
  private Triangle information;

  /** Steps that the passes are moved by in the model, and what that does to the readings. */
  private final double[] chance;

  private final double[] ofChance;
  private StrokeFit settled;
  private StrokeFit sharp;

  private StrokeFit(
      StrokeModel model, List<FilmAt> readings, HandScatter scatter, double[] start, double level) {
    this(model, readings, scatter, start, level, new double[2 * model.plan().passes()]);
  }

  private StrokeFit(
      StrokeModel model,
      List<FilmAt> readings,
      HandScatter scatter,
      double[] start,
      double level,
      double[] chance) {
    this.chance = chance;
    this.ofChance = scatter.ofSteps(chance);
    this.model = model;
    this.readings = readings;
    this.scatter = scatter;
    this.priors = Priors.of(model, level);
    this.parameters = start;
  }

  /**
   * @param start as many as the model's parameters
   * @param level ln of about the mean film, the middle of the level's wide prior
   */
  static StrokeFit of(
      StrokeModel model, List<FilmAt> readings, HandScatter scatter, double[] start, double level) {
    StrokeFit fit = at(model, readings, scatter, start, level);
    fit.run(SETTLED);
    return fit;
  }

  /** At the start, not yet run. */
  static StrokeFit at(
      StrokeModel model, List<FilmAt> readings, HandScatter scatter, double[] start, double level) {
    return new StrokeFit(model, readings, scatter, start.clone(), level);
  }

  /**
   * @param settled a step that gains less is the last one
   */
  private void run(double settled) {
    take(new Point(parameters));
    double damping = FIRST_DAMPING;
    for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING; step++) {
      Point next = new Point(moved(damping));
      double gained = objective - next.objective;
      if (gained < 0) {
        damping *= 10;
      } else {
        take(next);
        damping /= 10;
        if (gained < settled) {
          break;
        }
      }
    }
    information = Triangle.of(normal(0));
  }

  /**
   * Film and slopes at one set of parameters; worked out together, since they share most of the
   * work.
   */
  private final class Point {
    private final double[] at;
    private final double[] white;
    private final double[][] slopes;
    private final double objective;

    Point(double[] p) {
      this.at = p;
      StrokeModel.At film = model.at(p);
      double[] off = new double[readings.size()];
      this.slopes = new double[p.length][off.length];
      for (int i = 0; i < off.length; i++) {
        FilmAt reading = readings.get(i);
        off[i] = reading.film() - film.film(reading.x(), reading.y()) + ofChance[i];
        for (int j = 0; j < p.length; j++) {
          slopes[j][i] = film.slopes[j];
        }
      }
      this.white = scatter.whitened(off);
      this.objective = square(white) + priors.against(p);
    }
  }

  private void take(Point point) {
    parameters = point.at;
    residual = point.white;
    columns = Arrays.stream(point.slopes).map(scatter::whitened).toArray(double[][]::new);
    objective = point.objective;
  }

  double objectiveAt(double[] p) {
    return square(residualsAt(p));
  }

  /** Whitened readings less the film, then what each parameter's prior has against it. */
  double[] residualsAt(double[] p) {
    StrokeModel.At at = model.at(p);
    double[] r = new double[readings.size()];
    for (int i = 0; i < r.length; i++) {
      FilmAt reading = readings.get(i);
      r[i] = reading.film() - at.film(reading.x(), reading.y()) + ofChance[i];
    }
    double[] all = Arrays.copyOf(scatter.whitened(r), r.length + p.length);
    for (int j = 0; j < p.length; j++) {
      all[r.length + j] = priors.off(p, j);
    }
    return all;
  }

  private double[][] normal(double damping) {
    double[][] a = new double[columns.length][columns.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j <= i; j++) {
        a[i][j] = dot(columns[i], columns[j]);
        a[j][i] = a[i][j];
      }
      a[i][i] = (a[i][i] + priors.precision(i)) * (1 + damping);
    }
    return a;
  }

  /** Where the objective falls: nil at the best point unless a bound holds it. */
  double[] downhill() {
    double[] downhill = new double[columns.length];
    for (int j = 0; j < downhill.length; j++) {
      downhill[j] = dot(columns[j], residual) - priors.pull(parameters, j);
    }
    return downhill;
  }

  private double[] moved(double damping) {
    double[] by = Triangle.of(normal(damping)).solve(downhill());
    double[] next = parameters.clone();
    for (int j = 0; j < next.length; j++) {
      next[j] += by[j];
    }
    model.bound(next);
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

  List<FilmAt> readings() {
    return readings;
  }

  /** ln of about the mean film, the middle of the level's prior. */
  double level() {
    return priors.level();
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
  double bulk() {
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

  /**
   * The same with each pass where the readings put it, as far as they show it. What chance did is
   * taken as small everywhere else; here the fit is made anew about where the passes have come to
   * lie, so that steps which were written down a little wrong do not make the fan look wider.
   */
  StrokeFit settled() {
    if (settled == null) {
      settled = settledBy(model);
    }
    return settled;
  }

  /**
   * The same by a fan with a rim that is next to sharp, as it is once the passes are known to a few
   * millimetres. A blurred one takes what a sharp one does between the passes for another fan or
   * other passes: with 108 readings of one coat at half overlap it has the overlap 0.012 too low.
   */
  StrokeFit sharp() {
    if (sharp == null) {
      sharp = settled().settledBy(model.sharp());
    }
    return sharp;
  }

  /**
   * {@link #settled()} from a fan of this width and from the passes as they were written down.
   *
   * @param fan ln of it over the written one
   */
  StrokeFit settledAbout(double fan) {
    return settledAbout(fan, model);
  }

  /** {@link #sharp()} from there. */
  StrokeFit sharpAbout(double fan) {
    return settledAbout(fan, model.sharp());
  }

  private StrokeFit settledAbout(double fan, StrokeModel written) {
    double[] start = parameters.clone();
    start[StrokeModel.FAN] = fan;
    written.bound(start);
    StrokeFit there = about(written, start, new double[chance.length]);
    there.take(there.new Point(start));
    return there.settledBy(written);
  }

  /**
   * @param written with each pass as it was written down
   */
  private StrokeFit settledBy(StrokeModel written) {
    StrokeFit next = this;
    for (int i = 0; i < SETTLING; i++) {
      next = next.aboutItsPasses(written);
    }
    return next;
  }

  private StrokeFit aboutItsPasses(StrokeModel written) {
    StrokeFit next = about(written, parameters.clone(), scatter.likely(residual));
    next.run(SETTLED_ABOUT);
    return next;
  }

  /** With each pass where these steps put it; not yet run. */
  private StrokeFit about(StrokeModel written, double[] start, double[] chances) {
    StrokeModel moved = written.moved(HandScatter.moves(written.plan(), chances));
    HandScatter about = HandScatter.about(moved, start, readings);
    return new StrokeFit(moved, readings, about, start, priors.level(), chances);
  }

  /** The steps, in standard deviations, that the passes are moved by in this fit's model. */
  double[] chance() {
    return chance;
  }

  /**
   * What came out on this panel, of a quantity that also depends on where chance put the passes:
   * the likeliest value by the parameters, moved by what the residuals say about chance (best
   * linear unbiased prediction, Goldberger 1962), scaled by {@link #birge()}.
   *
   * @param value by the parameters, with every step as it was written down
   * @param factors its slopes by the parameters
   * @param byChance what one standard deviation of each chance does to it, see {@link HandScatter}
   */
  Estimate cameOut(double value, double[] factors, double[] byChance) {
    double[] with = scatter.withReadings(byChance);
    double[] rest = factors.clone();
    for (int j = 0; j < rest.length; j++) {
      rest[j] -= dot(columns[j], with);
    }
    double chance = Math.max(0, square(byChance) - square(with));
    double variance = (square(information.below(rest)) + chance) * birge();
    return Estimate.of(value + dot(with, residual), Math.sqrt(variance));
  }

  /**
   * ln of the determinant of what is known of all parameters and chances, at others than here; up
   * to a constant.
   *
   * @param times how many times they differ by the following
   */
  double logInformation(double times, double[] byParameter, double[] byChance) {
    double[] p = new double[parameters.length];
    double[] c = new double[chance.length];
    Arrays.setAll(p, j -> parameters[j] + times * byParameter[j]);
    Arrays.setAll(c, k -> chance[k] + times * byChance[k]);
    model.bound(p);
    StrokeFit there = about(model, p, c);
    there.take(there.new Point(p));
    return there.scatter.logDeterminant() + Triangle.of(there.normal(0)).logDeterminant();
  }

  double uncertainty(int parameter) {
    double[] one = new double[parameters.length];
    one[parameter] = 1;
    return uncertaintyOf(one);
  }

  /** ln, with the scatter as large as the residuals show, where that is more than was stated. */
  double likelihood(double chiSquared) {
    int n = readings.size();
    double scale = Math.max(1, chiSquared / n);
    return -0.5 * (n * Math.log(scale) + chiSquared / scale);
  }

  /** ln of how well the readings are foretold, up to a constant that all rivals for them share. */
  double logEvidence() {
    return likelihood(square(residual))
        - 0.5 * scatter.logDeterminant()
        - 0.5 * priors.against(parameters)
        - 0.5 * information.logDeterminant()
        - priors.logVolume();
  }

  static double dot(double[] a, double[] b) {
    return Triangle.dot(a, b, a.length);
  }

  static double square(double[] a) {
    return dot(a, a);
  }
}
