package lapline.trade.stroke;

import static lapline.trade.stroke.StrokeFit.dot;
import static lapline.trade.stroke.StrokeFit.square;

/**
 * What one parameter more would bring to a fit, to first order: exact where it enters the film
 * linearly.
 *
 * @param value the likeliest value of the new parameter
 * @param evidence ln of how much better the readings are foretold with it than without, each with
 *     the scatter that it leaves
 * @param inBulk the same with the scatter that the bulk of the readings shows without it
 */
record Gain(double value, double evidence, double inBulk) {

  /**
   * @param column whitened slope of the film by the new parameter, at 0
   * @param usual standard deviation of its prior
   */
  static Gain of(StrokeFit fit, double[] column, double usual) {
    double[][] columns = fit.columns();
    double[] shared = new double[columns.length];
    for (int j = 0; j < shared.length; j++) {
      shared[j] = dot(columns[j], column);
    }
    double[] v = fit.information().below(shared);
    double own = square(column) + 1 / (usual * usual) - square(v);
    double pull = dot(column, fit.residual()) - dot(v, fit.information().below(fit.downhill()));
    double value = pull / own;
    double less = pull * value;
    double chi = square(fit.residual());
    double narrowing = -0.5 * Math.log(own * usual * usual);
    double better = fit.likelihood(Math.max(0, chi - less)) - fit.likelihood(chi);
    return new Gain(value, better + narrowing, 0.5 * less / fit.bulk() + narrowing);
  }
}
