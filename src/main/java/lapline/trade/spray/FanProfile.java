package lapline.trade.spray;

import java.util.List;

/**
 * The shape of the film that one straight stroke leaves across the fan; how wide and how much
 * belongs to {@link Pass}.
 *
 * <p>Position is u = 2x/W: −1 and 1 at the ends of the fan, 0 in its middle. Every profile is
 * scaled to a mean of 1 over the fan, so that passes of different shape carry the same paint.
 */
public sealed interface FanProfile permits BetaProfile, MeasuredProfile, HeeledProfile {

  /**
   * Film at u relative to the mean film over the fan.
   *
   * @param u any number; beyond the fan, |u| > 1, the film is 0, and so it is for NaN
   */
  double at(double u);

  /** Thickest film relative to the mean over the fan; 1 or more. */
  double peak();

  /**
   * Where the profile jumps or has a corner, in rising order from −1 to 1, so that it can be
   * integrated piece by piece.
   */
  default double[] corners() {
    return new double[] {-1, 1};
  }

  /** An even band, as a well-set fan shows on a test pattern. */
  static FanProfile uniform() {
    return new BetaProfile(1);
  }

  /** 1 − u²: the usual model of a fan with tapered ends. */
  static FanProfile parabola() {
    return new BetaProfile(2);
  }

  /**
   * (1 − u²)^(β−1); a static spot of exponent m leaves a stroke of β = m + 1½.
   *
   * @param beta a pure number, 1 (even) to 20 (narrow)
   * @throws lapline.trade.measure.MeasureException for any other
   */
  static FanProfile beta(double beta) {
    return new BetaProfile(beta);
  }

  /**
   * A test pattern as it was read.
   *
   * @param film readings at even steps from one end of the fan to the other, in any one unit; at
   *     least 3, 0 or more each, not all 0
   * @throws lapline.trade.measure.MeasureException for any other
   */
  static FanProfile measured(List<Double> film) {
    return new MeasuredProfile(film);
  }
}
