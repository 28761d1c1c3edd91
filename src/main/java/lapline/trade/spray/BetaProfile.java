package lapline.trade.spray;

import java.util.function.DoubleUnaryOperator;
import lapline.trade.measure.Valid;
import org.hipparchus.special.Beta;

/**
 * The beta stroke profile (1 − u²)^(β−1): β = 1 even, 1.5 elliptic, 2 parabolic, 2.5 the stroke of
 * a parabolic spot.
 *
 * <p>Mean over peak is ½ B(½, β). Source: Balkan and Arıkan, Mechanics Research Communications
 * 26(5), 1999 (from memory). Accuracy: that of double arithmetic. Two of the same β are equal.
 */
public final class BetaProfile implements FanProfile {
  private final double beta;
  private final double peak;
  private final DoubleUnaryOperator taper;

  /**
   * @param beta a pure number, 1 to 20
   * @throws lapline.trade.measure.MeasureException for any other
   */
  public BetaProfile(double beta) {
    this.beta = Valid.between("beta", beta, 1, 20);
    this.peak = 2 / Math.exp(Beta.logBeta(0.5, beta));
    this.taper = taper(beta);
  }

  /** The usual shapes without a power, which takes longer than all the rest of a deposit. */
  private static DoubleUnaryOperator taper(double beta) {
    if (beta == 1) {
      return t -> 1;
    }
    if (beta == 1.5) {
      return Math::sqrt;
    }
    if (beta == 2) {
      return t -> t;
    }
    return beta == 2.5 ? t -> t * Math.sqrt(t) : t -> Math.pow(t, beta - 1);
  }

  /** The exponent's β, 1 to 20. */
  public double beta() {
    return beta;
  }

  @Override
  public double at(double u) {
    return Math.abs(u) <= 1 ? peak * taper.applyAsDouble(1 - u * u) : 0;
  }

  @Override
  public double peak() {
    return peak;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BetaProfile b && b.beta == beta;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(beta);
  }

  @Override
  public String toString() {
    return "BetaProfile[beta=" + beta + "]";
  }
}
