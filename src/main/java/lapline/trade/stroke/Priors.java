package lapline.trade.stroke;

/**
 * What is known of the parameters of a {@link StrokeModel} before the film is read, from what was
 * written down and from how hands usually are: a normal distribution of each.
 */
final class Priors {
  private static final double LEVEL = 1;

  /** No shape is taken as known better than this. */
  private static final double LEAST_SHAPE = 1e-3;

  private final double[] mean;
  private final double[] sd;

  private Priors(double[] mean, double[] sd) {
    this.mean = mean;
    this.sd = sd;
  }

  /**
   * @param level ln of about the mean film, the middle of the level's wide prior
   */
  static Priors of(StrokeModel model, double level) {
    double[] mean = new double[model.parameters()];
    mean[StrokeModel.LEVEL] = level;
    return new Priors(mean, standardDeviations(model));
  }

  static double[] standardDeviations(StrokeModel model) {
    PassPlan plan = model.plan();
    double[] sd = new double[model.parameters()];
    sd[StrokeModel.LEVEL] = LEVEL;
    sd[StrokeModel.STEP] =
        plan.coats().stream().mapToDouble(PassPlan.Coat::all).max().orElseThrow();
    sd[StrokeModel.FAN] = plan.fanWidth().standardUncertainty() / plan.fanWidth().value();
    sd[StrokeModel.SHAPE] =
        Math.max(LEAST_SHAPE, plan.beta().standardUncertainty() / plan.beta().value());
    for (int c = 0; c < plan.coats().size(); c++) {
      sd[StrokeModel.SHIFT + c] = plan.coats().get(c).shift();
    }
    for (int i = 0; i < model.departures().size(); i++) {
      sd[model.first() + i] = model.departures().get(i).usual();
    }
    return sd;
  }

  double level() {
    return mean[StrokeModel.LEVEL];
  }

  /** How far one parameter lies off its middle, in standard deviations. */
  double off(double[] p, int j) {
    return (p[j] - mean[j]) / sd[j];
  }

  double standardDeviation(int j) {
    return sd[j];
  }

  /** The value of one parameter that lies so many standard deviations off its middle. */
  double at(double off, int j) {
    return mean[j] + off * sd[j];
  }

  double precision(int j) {
    return 1 / (sd[j] * sd[j]);
  }

  /** Slope of half of {@link #against} by one parameter. */
  double pull(double[] p, int j) {
    return off(p, j) / sd[j];
  }

  /** What all priors have against these parameters: the sum of squares. */
  double against(double[] p) {
    double sum = 0;
    for (int j = 0; j < p.length; j++) {
      sum += off(p, j) * off(p, j);
    }
    return sum;
  }

  /** ln of the product of the standard deviations. */
  double logVolume() {
    double sum = 0;
    for (double one : sd) {
      sum += Math.log(one);
    }
    return sum;
  }
}
