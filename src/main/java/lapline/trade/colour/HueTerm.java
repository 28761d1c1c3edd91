package lapline.trade.colour;

/**
 * T = 1 − 0.17 cos(h − 30°) + 0.24 cos 2h + 0.32 cos(3h + 6°) − 0.20 cos(4h − 63°) of CIEDE2000:
 * how much finer hues are told apart in some directions than in others. Its multiple angles come
 * from one sine and one cosine.
 */
final class HueTerm {
  private static final double COS_30 = Hue.cosine(30);
  private static final double SIN_30 = Hue.cosine(60);
  private static final double COS_6 = Hue.cosine(6);
  private static final double SIN_6 = Hue.cosine(84);
  private static final double COS_63 = Hue.cosine(63);
  private static final double SIN_63 = Hue.cosine(27);

  // the formula sorted by powers of cos h, sin h and cos 2h, sin 2h alone
  private static final double CONSTANT = 1 + 0.20 * COS_63;
  private static final double COS = -0.17 * COS_30 - 0.32 * COS_6;
  private static final double COS_COS2 = 0.64 * COS_6;
  private static final double SIN = -0.17 * SIN_30 - 0.32 * SIN_6;
  private static final double SIN_COS2 = -0.64 * SIN_6;
  private static final double COS2_COS2 = -0.40 * COS_63;
  private static final double COS2_SIN2 = -0.40 * SIN_63;

  private HueTerm() {}

  /**
   * @param cos cosine of the mean hue
   * @param sin sine of it
   */
  static double at(double cos, double sin) {
    return sum(cos, sin, cos * cos - sin * sin, 2 * sin * cos);
  }

  private static double sum(double cos, double sin, double cos2, double sin2) {
    return CONSTANT
        + cos * (COS + COS_COS2 * cos2)
        + sin * (SIN + SIN_COS2 * cos2)
        + cos2 * (0.24 + COS2_COS2 * cos2 + COS2_SIN2 * sin2);
  }

  /** S_H = 1 + 0.015 C T of many pairs, as a {@link Pass}. */
  static void perHue(double[] cos, double[] sin, double[] chroma, double[] perHue, int n) {
    for (int i = 0; i < n; i++) {
      double cos2 = cos[i] * cos[i] - sin[i] * sin[i];
      double sin2 = 2 * sin[i] * cos[i];
      perHue[i] = 1 + 0.015 * chroma[i] * sum(cos[i], sin[i], cos2, sin2);
    }
  }
}
