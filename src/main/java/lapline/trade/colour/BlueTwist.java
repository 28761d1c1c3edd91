package lapline.trade.colour;

import java.util.ArrayList;
import java.util.List;

/**
 * sin 2Δθ of CIEDE2000, Δθ = 30° exp(−((h − 275°)/25)²): how far the ellipses of just-seen
 * differences stand askew among the blues.
 *
 * <p>It depends on the cosine of h − 275° alone, and smoothly, so it is kept as polynomials made
 * from the formula once; arc, exponential and sine would take as long as all the rest of a
 * difference. Accuracy 1e-14.
 */
final class BlueTwist {
  private static final double COS_275 = Hue.cosine(275);
  private static final double SIN_275 = Hue.cosine(185);

  /** 1 − cosine from which the twist is less than 1e-16. */
  private static final double END = 1.9;

  /**
   * Of the bell's fourth root, which is flat enough for few terms. Beyond 1.4 the bell is so low
   * that what the polynomial errs there, to 2, does not show in its fourth power.
   */
  private static final Polynomial ROOT_OF_BELL =
      new Polynomial(x -> Math.pow(bell(x), 0.25), 1.4, 13);

  /** sin(60° x)/x over x². */
  private static final Polynomial SINE_PER_BELL = new Polynomial(BlueTwist::sinePerBell, 1, 7);

  private BlueTwist() {}

  /**
   * @param cos cosine of the hue
   * @param sin sine of it
   */
  static double sine(double cos, double sin) {
    double along = along(cos, sin);
    if (along >= END || isPastRed(cos, sin)) {
      return 0;
    }
    double root = ROOT_OF_BELL.at(along);
    double bell = root * root * (root * root);
    return bell * SINE_PER_BELL.at(bell * bell);
  }

  private static double along(double cos, double sin) {
    return 1 - (cos * COS_275 + sin * SIN_275);
  }

  /**
   * The formula counts hues from 0, so those up to 90° are 185° and more away from 275°, the long
   * way round.
   */
  private static boolean isPastRed(double cos, double sin) {
    return cos > 0 && sin >= 0;
  }

  private static double bell(double oneLessCosine) {
    double fromBlue = Math.toDegrees(2 * Math.asin(Math.sqrt(oneLessCosine / 2))) / 25;
    return Math.exp(-fromBlue * fromBlue);
  }

  private static double sinePerBell(double squared) {
    double bell = Math.sqrt(squared);
    return bell == 0 ? Math.PI / 3 : Math.sin(Math.PI / 3 * bell) / bell;
  }

  /** Of many hues, in {@linkplain Pass passes}. */
  static final class Block {
    private final double[] along = DifferenceBlock.row();
    private final double[] bell = DifferenceBlock.row();
    private final double[] sine = DifferenceBlock.row();

    /**
     * R_T times the root of the product of the chromas.
     *
     * @param crossed where it goes
     */
    List<Pass> passes(
        double[] cos, double[] sin, double[] product, double[] saturation, double[] crossed) {
      List<Pass> all = new ArrayList<>();
      all.add(n -> along(cos, sin, along, n));
      all.addAll(ROOT_OF_BELL.passes(along, bell));
      all.add(n -> fourthPower(bell, along, n));
      all.addAll(SINE_PER_BELL.passes(along, sine));
      all.add(n -> counted(cos, sin, bell, n));
      all.add(n -> crossed(product, saturation, bell, sine, crossed, n));
      return all;
    }

    private static void along(double[] cos, double[] sin, double[] along, int n) {
      for (int i = 0; i < n; i++) {
        along[i] = BlueTwist.along(cos[i], sin[i]);
      }
    }

    private static void fourthPower(double[] bell, double[] squared, int n) {
      for (int i = 0; i < n; i++) {
        double root = bell[i] * bell[i];
        bell[i] = root * root;
        squared[i] = bell[i] * bell[i];
      }
    }

    /** Nothing where neither is below 0: half of what is from −1 to 1 has its sign as its floor. */
    private static void counted(double[] cos, double[] sin, double[] bell, int n) {
      for (int i = 0; i < n; i++) {
        double past = (1 + Math.floor(0.5 * cos[i])) * (1 + Math.floor(0.5 * sin[i]));
        bell[i] *= 1 - past;
      }
    }

    private static void crossed(
        double[] product,
        double[] saturation,
        double[] bell,
        double[] sine,
        double[] crossed,
        int n) {
      for (int i = 0; i < n; i++) {
        crossed[i] = -2 * Math.sqrt(product[i] * saturation[i]) * (bell[i] * sine[i]);
      }
    }
  }
}
