package lapline.trade.colour;

import lapline.trade.measure.Valid;

/**
 * Colour difference CMC(l:c), judged from the first colour: another number the other way round.
 *
 * <p>Source: ISO 105-J03:2009, BS 6923:1988 (from memory). 2:1 asks whether a lot is acceptable,
 * 1:1 whether a difference is seen.
 *
 * @param lightness l, how much lightness may differ, more than 0
 * @param chroma c, how much chroma may differ, more than 0
 */
public record Cmc(double lightness, double chroma) {
  /** 2:1, whether a lot is acceptable. */
  public static final Cmc ACCEPTABLE = new Cmc(2, 1);

  /** 1:1, whether a difference is seen. */
  public static final Cmc SEEN = new Cmc(1, 1);

  public Cmc {
    Valid.positive("l", lightness);
    Valid.positive("c", chroma);
  }

  /**
   * The difference of a trial from its standard.
   *
   * @param standard the colour that is right, stated for the same white as the trial
   */
  public double of(Lab standard, Lab trial) {
    double dL = (trial.lightness() - standard.lightness()) / (lightness * perLightness(standard));
    double c1 = standard.chroma();
    double perChroma = 0.0638 * c1 / (1 + 0.0131 * c1) + 0.638;
    double chromaStep = trial.chroma() - c1;
    double da = trial.a() - standard.a();
    double db = trial.b() - standard.b();
    double hueSquared = Math.max(0, da * da + db * db - chromaStep * chromaStep);
    double dC = chromaStep / (chroma * perChroma);
    double perHue = perChroma * hueShare(c1, standard.hue());
    return Math.sqrt(dL * dL + dC * dC + hueSquared / (perHue * perHue));
  }

  private static double perLightness(Lab standard) {
    double l = standard.lightness();
    return l < 16 ? 0.511 : 0.040975 * l / (1 + 0.01765 * l);
  }

  private static double hueShare(double chroma, double hue) {
    double fourth = Math.pow(chroma, 4);
    double f = Math.sqrt(fourth / (fourth + 1900));
    double t =
        hue >= 164 && hue <= 345
            ? 0.56 + Math.abs(0.2 * Hue.cosine(hue + 168))
            : 0.36 + Math.abs(0.4 * Hue.cosine(hue + 35));
    return f * t + 1 - f;
  }
}
