package lapline.pages.drawing;

/**
 * One hue from light to dark in even steps of lightness, so that a map printed in grey still reads
 * true.
 *
 * <p>Tones are taken from CIE 1976 L*a*b* at hue 180° (a blue green) for D65 and the 2° observer;
 * chroma is drawn in until the tone lies inside sRGB. Lightness of the result keeps within 0.5 of
 * what was asked (8-bit rounding). Source: CIE 015:2018 clause 8.2.1; IEC 61966-2-1 for sRGB.
 */
public final class LightnessScale {
  private static final double LIGHTEST = 96;
  private static final double DARKEST = 50;
  private static final double CHROMA = 34;
  private static final double HUE = Math.toRadians(180);

  private LightnessScale() {}

  /**
   * @param share 0 for the lightest tone, 1 for the darkest; values beyond are taken as the end
   */
  public static Tone at(double share) {
    double within = Math.max(0, Math.min(1, share));
    double lightness = LIGHTEST + (DARKEST - LIGHTEST) * within;
    for (double chroma = CHROMA * Math.min(1, 0.2 + 1.6 * within); chroma > 0; chroma -= 1) {
      double[] rgb = linear(lightness, chroma);
      if (inGamut(rgb)) {
        return tone(rgb);
      }
    }
    return tone(linear(lightness, 0));
  }

  private static double[] linear(double lightness, double chroma) {
    double fy = (lightness + 16) / 116;
    double x = 0.95047 * unfold(fy + chroma * Math.cos(HUE) / 500);
    double y = unfold(fy);
    double z = 1.08883 * unfold(fy - chroma * Math.sin(HUE) / 200);
    return new double[] {
      3.2406 * x - 1.5372 * y - 0.4986 * z,
      -0.9689 * x + 1.8758 * y + 0.0415 * z,
      0.0557 * x - 0.2040 * y + 1.0570 * z
    };
  }

  private static double unfold(double f) {
    return f > 6.0 / 29 ? f * f * f : 3 * (6.0 / 29) * (6.0 / 29) * (f - 4.0 / 29);
  }

  private static boolean inGamut(double[] rgb) {
    for (double part : rgb) {
      if (part < 0 || part > 1) {
        return false;
      }
    }
    return true;
  }

  private static Tone tone(double[] rgb) {
    return new Tone(eightBit(rgb[0]) << 16 | eightBit(rgb[1]) << 8 | eightBit(rgb[2]));
  }

  private static int eightBit(double linear) {
    double in = Math.max(0, Math.min(1, linear));
    double out = in <= 0.0031308 ? 12.92 * in : 1.055 * Math.pow(in, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * out);
  }
}
