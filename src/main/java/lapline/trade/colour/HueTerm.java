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

  /** Of many hues, in two passes over them, so that a processor takes several at once. */
  static final class Block {
    private final double[] cos2 = new double[DifferenceBlock.SIZE];
    private final double[] sin2 = new double[DifferenceBlock.SIZE];

    void at(double[] cos, double[] sin, double[] term, int n) {
      doubled(cos, sin, cos2, sin2, n);
      sum(cos, sin, cos2, sin2, term, n);
    }

    private static void doubled(double[] cos, double[] sin, double[] cos2, double[] sin2, int n) {
      for (int i = 0; i < n; i++) {
        cos2[i] = cos[i] * cos[i] - sin[i] * sin[i];
        sin2[i] = 2 * sin[i] * cos[i];
      }
    }

    private static void sum(
        double[] cos, double[] sin, double[] cos2, double[] sin2, double[] term, int n) {
      for (int i = 0; i < n; i++) {
        term[i] = HueTerm.sum(cos[i], sin[i], cos2[i], sin2[i]);
      }
    }
  }
}
