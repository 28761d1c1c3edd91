package lapline.trade.colour;

/**
 * Colour difference CIEDE2000, about 1 where a trained eye begins to see it side by side; the same
 * both ways round.
 *
 * <p>Source: ISO/CIE 11664-6; written after Sharma, Wu, Dalal, Color Research and Application 30
 * (2005) 21–30, whose 34 pairs it meets to the last printed digit. Meant for differences below
 * about 5; for larger ones the number still grows but no longer means what it counts.
 */
public final class Ciede2000 {
  private static final double CHROMA_25_TO_7 = Math.pow(25, 7);

  private Ciede2000() {}

  /** The difference of two colours stated for the same white. */
  public static double of(Lab first, Lab second) {
    return between(first, second).size();
  }

  /** The difference taken apart into lightness, chroma and hue, each in steps as seen. */
  static Steps between(Lab first, Lab second) {
    double stretch = stretch((first.chroma() + second.chroma()) / 2);
    double a1 = stretch * first.a();
    double a2 = stretch * second.a();
    double c1 = Math.hypot(a1, first.b());
    double c2 = Math.hypot(a2, second.b());
    double h1 = Hue.degrees(a1, first.b());
    double h2 = Hue.degrees(a2, second.b());
    boolean grey = c1 * c2 == 0;
    double chroma = (c1 + c2) / 2;
    double hue = grey ? h1 + h2 : meanHue(h1, h2);
    // a grey has no hue, and none is felt: the root below is 0
    double turn = turn(h2 - h1);
    Weights weights = Weights.at((first.lightness() + second.lightness()) / 2, chroma, hue);
    return new Steps(
        (second.lightness() - first.lightness()) / weights.lightness,
        (c2 - c1) / weights.chroma,
        2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(turn / 2)) / weights.hue,
        weights.crossed,
        stretch,
        hue,
        weights);
  }

  /** How far a* is stretched near grey, where the eye tells reds and greens apart most finely. */
  private static double stretch(double chroma) {
    return 1 + 0.5 * (1 - saturation(chroma));
  }

  private static double saturation(double chroma) {
    double seventh = Math.pow(chroma, 7);
    return Math.sqrt(seventh / (seventh + CHROMA_25_TO_7));
  }

  private static double turn(double degrees) {
    return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
  }

  private static double meanHue(double h1, double h2) {
    double sum = h1 + h2;
    if (Math.abs(h1 - h2) > 180) {
      return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }
    return sum / 2;
  }

  /**
   * A difference in steps as seen: each part over its weighting function.
   *
   * @param crossed R_T, how far chroma and hue are felt together, which matters among blues only
   * @param stretch 1 + G
   * @param hue mean hue, degrees
   */
  record Steps(
      double lightness,
      double chroma,
      double hue,
      double crossed,
      double stretch,
      double meanHue,
      Weights weights) {

    double size() {
      double squared = lightness * lightness + chroma * chroma + hue * hue + crossed * chroma * hue;
      // never negative but by rounding, for |R_T| stays below 2
      return Math.sqrt(Math.max(0, squared));
    }
  }

  /** S_L, S_C, S_H and R_T: what one just-seen step is at this place of the colour space. */
  record Weights(double lightness, double chroma, double hue, double crossed) {

    static Weights at(double lightness, double chroma, double hue) {
      double off = (lightness - 50) * (lightness - 50);
      double t =
          1
              - 0.17 * Hue.cosine(hue - 30)
              + 0.24 * Hue.cosine(2 * hue)
              + 0.32 * Hue.cosine(3 * hue + 6)
              - 0.20 * Hue.cosine(4 * hue - 63);
      double fromBlue = (hue - 275) / 25;
      double twist = Math.toRadians(60 * Math.exp(-fromBlue * fromBlue));
      return new Weights(
          1 + 0.015 * off / Math.sqrt(20 + off),
          1 + 0.045 * chroma,
          1 + 0.015 * chroma * t,
          -Math.sin(twist) * 2 * saturation(chroma));
    }
  }
}
