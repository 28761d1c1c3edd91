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

  private HueTerm() {}

  static double at(double cos, double sin) {
    double cos2 = cos * cos - sin * sin;
    double sin2 = 2 * sin * cos;
    return first(cos, sin, cos2) + third(cos, sin, cos2, sin2) + fourth(cos2, sin2);
  }

  private static double first(double cos, double sin, double cos2) {
    return 1 - 0.17 * (cos * COS_30 + sin * SIN_30) + 0.24 * cos2;
  }

  private static double third(double cos, double sin, double cos2, double sin2) {
    return 0.32 * (cos2 * (cos * COS_6 - sin * SIN_6) - sin2 * (sin * COS_6 + cos * SIN_6));
  }

  private static double fourth(double cos2, double sin2) {
    return -0.20 * ((cos2 * cos2 - sin2 * sin2) * COS_63 + 2 * sin2 * cos2 * SIN_63);
  }

  /**
   * Of many hues, a few terms in each pass over them, so that a processor takes several at once.
   */
  static final class Block {
    private final double[] cos2 = new double[DifferenceBlock.SIZE];
    private final double[] sin2 = new double[DifferenceBlock.SIZE];

    void at(double[] cos, double[] sin, double[] term, int n) {
      doubled(cos, sin, cos2, sin2, n);
      first(cos, sin, cos2, term, n);
      third(cos, sin, cos2, sin2, term, n);
      fourth(cos2, sin2, term, n);
    }

    private static void doubled(double[] cos, double[] sin, double[] cos2, double[] sin2, int n) {
      for (int i = 0; i < n; i++) {
        cos2[i] = cos[i] * cos[i] - sin[i] * sin[i];
        sin2[i] = 2 * sin[i] * cos[i];
      }
    }

    private static void first(double[] cos, double[] sin, double[] cos2, double[] term, int n) {
      for (int i = 0; i < n; i++) {
        term[i] = HueTerm.first(cos[i], sin[i], cos2[i]);
      }
    }

    private static void third(
        double[] cos, double[] sin, double[] cos2, double[] sin2, double[] term, int n) {
      for (int i = 0; i < n; i++) {
        term[i] += HueTerm.third(cos[i], sin[i], cos2[i], sin2[i]);
      }
    }

    private static void fourth(double[] cos2, double[] sin2, double[] term, int n) {
      for (int i = 0; i < n; i++) {
        term[i] += HueTerm.fourth(cos2[i], sin2[i]);
      }
    }
  }
}
