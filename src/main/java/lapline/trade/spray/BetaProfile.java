package lapline.trade.spray;

import lapline.trade.measure.Valid;
import org.hipparchus.special.Beta;

/**
 * The beta stroke profile (1 − u²)^(β−1): β = 1 even, 1.5 elliptic, 2 parabolic, 2.5 the stroke of
 * a parabolic spot.
 *
 * <p>Mean over peak is ½ B(½, β). Source: Balkan and Arıkan, Mechanics Research Communications
 * 26(5), 1999 (from memory). Accuracy: that of double arithmetic.
 *
 * @param beta 1 to 20
 */
public record BetaProfile(double beta) implements FanProfile {

  public BetaProfile {
    Valid.between("beta", beta, 1, 20);
  }

  @Override
  public double at(double u) {
    return Math.abs(u) > 1 ? 0 : peak() * Math.pow(1 - u * u, beta - 1);
  }

  @Override
  public double peak() {
    return 2 / Math.exp(Beta.logBeta(0.5, beta));
  }
}
