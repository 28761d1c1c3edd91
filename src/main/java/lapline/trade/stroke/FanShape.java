package lapline.trade.stroke;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * The film across a fan, (1 − u²)^(β−1) scaled to a mean of 1, with its derivatives; as {@link
 * lapline.trade.spray.BetaProfile}, leaning to one side by a share that is odd in u and so moves no
 * paint out of the fan.
 */
final class FanShape {
  /** Keeps the slope at a blunt end finite: at the last 2 per mille of the fan. */
  private static final double RIM = 0.004;

  private final double beta;
  private final double lean;
  private final double peak;
  private final double peakSlope;

  /** Film at the last place asked for, and its derivatives by u, by ln β and by the lean. */
  double at;

  double byPlace;
  double byShape;
  double byLean;

  FanShape(double beta, double lean) {
    this.beta = beta;
    this.lean = lean;
    this.peak = 2 / Math.exp(Beta.logBeta(0.5, beta));
    this.peakSlope = Gamma.digamma(beta + 0.5) - Gamma.digamma(beta);
  }

  /**
   * @param u between −1 and 1, both excluded
   */
  void place(double u) {
    double inside = 1 - u * u;
    double kept = Math.max(RIM, inside);
    double even = peak * Math.pow(inside, beta - 1);
    double leaning = 1 + lean * u;
    at = even * leaning;
    byPlace = even * (lean - 2 * (beta - 1) * u / kept * leaning);
    byShape = at * (Math.log(kept) + peakSlope) * beta;
    byLean = even * u;
  }
}
