package lapline.trade.hiding;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Valid;

/**
 * How nearly a film looks the same over black and over white: luminance over black divided by
 * luminance over white, at the same film and in the same light.
 *
 * <p>Being a ratio, it needs no calibrated meter, only one that is linear and a light that stays.
 * Source: ASTM D2805 and ISO 6504-3, from memory; there the white has a reflectance of 0.80. Not
 * for metallics read at one angle, which ISO 6504-1 excludes.
 */
public final class ContrastRatio {
  /** From here on a film hides, by common standard practice. */
  public static final double HIDING = 0.98;

  private ContrastRatio() {}

  /**
   * Ratio, 0 to about 1; noise may put it a little above 1. Uncertainty to first order.
   *
   * @param overBlack luminance or reflectance, 0 or more, any unit
   * @param overWhite the same over white, same unit, more than 0
   */
  public static Estimate of(Estimate overBlack, Estimate overWhite) {
    Valid.notNegative("overBlack", overBlack.value());
    Valid.positive("overWhite", overWhite.value());
    return Gum.ratio(overBlack, overWhite);
  }
}
