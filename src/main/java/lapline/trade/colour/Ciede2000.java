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
    double stretch = stretch((length(first.a(), first.b()) + length(second.a(), second.b())) / 2);
    double a1 = stretch * first.a();
    double a2 = stretch * second.a();
    double c1 = length(a1, first.b());
    double c2 = length(a2, second.b());
    double chroma = (c1 + c2) / 2;
    HuePair hues = HuePair.of(a1, first.b(), c1, a2, second.b(), c2);
    Weights weights =
        Weights.at((first.lightness() + second.lightness()) / 2, chroma, hues.cos(), hues.sin());
    return new Steps(
        (second.lightness() - first.lightness()) / weights.lightness,
        (c2 - c1) / weights.chroma,
        hues.step() / weights.hue,
        weights.crossed,
        stretch,
        hues,
        weights);
  }

  /** How far a* is stretched near grey, where the eye tells reds and greens apart most finely. */
  private static double stretch(double chroma) {
    return 1 + 0.5 * (1 - saturation(chroma));
  }

  private static double saturation(double chroma) {
    double squared = chroma * chroma;
    double seventh = squared * squared * squared * chroma;
    return Math.sqrt(seventh / (seventh + CHROMA_25_TO_7));
  }

  /** Of a size that colours have; {@link Math#hypot}, for any size, takes several times as long. */
  static double length(double a, double b) {
    return Math.sqrt(a * a + b * b);
  }

  /**
   * A difference in steps as seen: each part over its weighting function.
   *
   * @param crossed R_T, how far chroma and hue are felt together, which matters among blues only
   * @param stretch 1 + G
   */
  record Steps(
      double lightness,
      double chroma,
      double hue,
      double crossed,
      double stretch,
      HuePair hues,
      Weights weights) {

    double size() {
      double squared = lightness * lightness + chroma * chroma + hue * hue + crossed * chroma * hue;
      // never negative but by rounding, for |R_T| stays below 2
      return Math.sqrt(Math.max(0, squared));
    }
  }

  /** S_L, S_C, S_H and R_T: what one just-seen step is at this place of the colour space. */
  record Weights(double lightness, double chroma, double hue, double crossed) {

    /**
     * @param cos cosine of the mean hue, sin its sine
     */
    static Weights at(double lightness, double chroma, double cos, double sin) {
      double off = (lightness - 50) * (lightness - 50);
      return new Weights(
          1 + 0.015 * off / Math.sqrt(20 + off),
          1 + 0.045 * chroma,
          1 + 0.015 * chroma * HueTerm.at(cos, sin),
          -BlueTwist.sine(cos, sin) * 2 * saturation(chroma));
    }
  }
}
