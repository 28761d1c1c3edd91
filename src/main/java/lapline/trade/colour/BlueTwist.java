package lapline.trade.colour;

import org.hipparchus.analysis.polynomials.PolynomialFunctionLagrangeForm;

/**
 * sin 2Δθ of CIEDE2000, Δθ = 30° exp(−((h − 275°)/25)²): how far the ellipses of just-seen
 * differences stand askew among the blues.
 *
 * <p>It depends on the cosine of h − 275° alone, and smoothly, so it is kept as polynomials over
 * that cosine, made from the formula once; arc, exponential and sine would take as long as all the
 * rest of a difference. Accuracy 1e-13.
 */
final class BlueTwist {
  private static final double COS_275 = Hue.cosine(275);
  private static final double SIN_275 = Hue.cosine(185);

  /** 1 − cosine from which the twist is less than 1e-16. */
  private static final double END = 1.9;

  private static final int PIECES = 192;
  private static final int TERMS = 8;
  private static final double PER_PIECE = PIECES / END;
  private static final double[] COEFFICIENTS = coefficients();

  private BlueTwist() {}

  /**
   * @param cos cosine of the hue
   * @param sin sine of it
   */
  static double sine(double cos, double sin) {
    if (cos > 0 && sin >= 0) {
      // the formula counts hues from 0, so these are 185° and more away from 275°, the long way
      // round
      return 0;
    }
    double along = (1 - (cos * COS_275 + sin * SIN_275)) * PER_PIECE;
    int piece = (int) along;
    if (piece >= PIECES) {
      return 0;
    }
    double u = along - piece - 0.5;
    double sum = 0;
    for (int i = TERMS * (piece + 1) - 1; i >= TERMS * piece; i--) {
      sum = sum * u + COEFFICIENTS[i];
    }
    return sum;
  }

  private static double[] coefficients() {
    double[] all = new double[PIECES * TERMS];
    for (int piece = 0; piece < PIECES; piece++) {
      System.arraycopy(polynomial(piece + 0.5), 0, all, TERMS * piece, TERMS);
    }
    return all;
  }

  /** Through the places of a Chebyshev polynomial, where it strays least between them. */
  private static double[] polynomial(double middle) {
    double[] at = new double[TERMS];
    double[] value = new double[TERMS];
    for (int i = 0; i < TERMS; i++) {
      at[i] = Math.cos(Math.PI * (i + 0.5) / TERMS) / 2;
      value[i] = byFormula((middle + at[i]) / PER_PIECE);
    }
    return new PolynomialFunctionLagrangeForm(at, value).getCoefficients();
  }

  private static double byFormula(double oneLessCosine) {
    double fromBlue = Math.toDegrees(2 * Math.asin(Math.sqrt(oneLessCosine / 2))) / 25;
    return Math.sin(Math.toRadians(60 * Math.exp(-fromBlue * fromBlue)));
  }
}
