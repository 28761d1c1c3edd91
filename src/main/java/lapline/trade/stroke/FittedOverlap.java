package lapline.trade.stroke;

import lapline.trade.measure.Estimate;

/** 1 − step / fan width of the passes over the panel, by one fit. */
final class FittedOverlap {
  /** How far the median lies off the likeliest value, as a share of how far the mean does. */
  private static final double OF_MEAN = 2.0 / 3;

  private final StrokeFit fit;
  private final double value;

  /** Its slopes by each parameter, and by one standard deviation of each chance. */
  private final double[] factors;

  private final double[] byChance;

  FittedOverlap(StrokeFit fit) {
    double[] p = fit.parameters();
    PassPlan plan = fit.model().plan();
    double step = plan.stepOverPanel();
    double wider = Math.exp(p[StrokeModel.STEP] - p[StrokeModel.FAN]);
    double share = step / plan.fanWidth().value() * wider;
    this.fit = fit;
    this.value = 1 - share;
    this.factors = new double[p.length];
    factors[StrokeModel.STEP] = -share;
    factors[StrokeModel.FAN] = share;
    this.byChance = HandScatter.stepByChance(plan);
    for (int k = 0; k < byChance.length; k++) {
      byChance[k] *= -share / step;
    }
  }

  Estimate likeliest() {
    return fit.cameOut(value, factors, byChance);
  }

  /**
   * The overlap that may as well have been less as more. It lies off the likeliest one to the side
   * where more is as likely: the mean by half of what the ln of the determinant of the information
   * falls by along the way on which all else follows the overlap (the first term of Lindley,
   * Approximate Bayesian methods, Trabajos de Estadística 31, 1980), and the median by two thirds
   * of that (Pearson's rule for distributions that lean a little); both from memory.
   */
  double median() {
    Estimate likeliest = likeliest();
    double deviation = likeliest.standardUncertainty();
    double[] along = parametersAlong();
    double[] chance = chanceAlong(along);
    double falls =
        fit.logInformation(-1 / deviation, along, chance)
            - fit.logInformation(1 / deviation, along, chance);
    double meanLiesOff = deviation * falls / 4;
    return likeliest.value() + OF_MEAN * meanLiesOff;
  }

  /** Covariance of each parameter with the overlap. */
  private double[] parametersAlong() {
    double[] with = fit.scatter().withReadings(byChance);
    double[] rest = factors.clone();
    for (int j = 0; j < rest.length; j++) {
      rest[j] -= StrokeFit.dot(fit.columns()[j], with);
    }
    return fit.information().solve(rest);
  }

  /** Covariance of each chance with the overlap. */
  private double[] chanceAlong(double[] parametersAlong) {
    double[] film = fit.scatter().withReadings(byChance);
    for (int j = 0; j < parametersAlong.length; j++) {
      for (int i = 0; i < film.length; i++) {
        film[i] += fit.columns()[j][i] * parametersAlong[j];
      }
    }
    double[] told = fit.scatter().likely(film);
    double[] along = byChance.clone();
    for (int k = 0; k < along.length; k++) {
      along[k] -= told[k];
    }
    return along;
  }
}
