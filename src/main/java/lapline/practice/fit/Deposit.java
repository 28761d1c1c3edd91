package lapline.practice.fit;

import lapline.trade.spray.FanProfile;
import lapline.trade.spray.Heel;
import lapline.trade.spray.HeeledProfile;

/**
 * The deposit of passes across the stroke, from a parabolic fan, tabulated for speed; relative to
 * the mean film of one stroke over its fan.
 *
 * <p>Linear between 129 steps of the fan: within 1e-4 of the profile itself.
 */
final class Deposit {
  private static final int STEPS = 128;

  /** A fan turned by 15° with a half angle of 32° (250 mm wide at 200 mm). */
  private static final Heel HEEL = new Heel(Math.toRadians(15), Math.toRadians(32));

  /** One upright stroke. */
  static final Deposit UPRIGHT = new Deposit(FanProfile.parabola());

  /** One stroke heeled by 15°, its fan kept where it was aimed. */
  static final Deposit HEELED = new Deposit(new HeeledProfile(FanProfile.parabola(), HEEL));

  private final double[] table = new double[STEPS + 1];

  private Deposit(FanProfile profile) {
    for (int i = 0; i <= STEPS; i++) {
      table[i] = profile.at(2.0 * i / STEPS - 1);
    }
  }

  /** At u = −1…1 across the fan; 0 beyond it. */
  double stroke(double u) {
    if (!(Math.abs(u) < 1)) {
      return 0;
    }
    double step = (u + 1) / 2 * STEPS;
    // rounding may put a hair within the fan's end on the end itself
    int left = Math.min(STEPS - 1, (int) step);
    return table[left] + (step - left) * (table[left + 1] - table[left]);
  }

  /**
   * Endlessly many even passes, relative to their own mean.
   *
   * @param y height above a centreline, metres
   */
  double passes(double y, double spacing, double fanWidth) {
    double sum = 0;
    int first = (int) Math.ceil((y - fanWidth / 2) / spacing);
    int last = (int) Math.floor((y + fanWidth / 2) / spacing);
    for (int k = first; k <= last; k++) {
      sum += stroke(2 * (y - k * spacing) / fanWidth);
    }
    return sum * spacing / fanWidth;
  }

  /** Thickest less thinnest of endlessly many even passes, relative to their mean. */
  double ripple(double spacing, double fanWidth) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i <= 16; i++) {
      double film = passes(spacing * i / 16, spacing, fanWidth);
      least = Math.min(least, film);
      most = Math.max(most, film);
    }
    return most - least;
  }
}
