package lapline.trade.spray;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * The share of a fan's width that the next pass covers again: 1 − spacing / fan width.
 *
 * <p>0.5 where the gun is aimed at the edge of the pass before. Negative where passes leave a bare
 * strip between them.
 */
public final class Overlap {
  private Overlap() {}

  /**
   * Overlap as a fraction; uncertainty to first order, spacing and width independent.
   *
   * @param spacing between the centrelines of neighbouring passes, metres, 0 or more
   * @param fanWidth on a test pattern at the same distance, metres, more than 0
   */
  public static Estimate of(Estimate spacing, Estimate fanWidth) {
    Valid.notNegative("spacing", spacing.value());
    Valid.positive("fanWidth", fanWidth.value());
    return Gum.difference(Estimate.of(1, 0), Gum.ratio(spacing, fanWidth));
  }

  /**
   * Spacing in metres that gives an overlap.
   *
   * @param overlap less than 1; negative for a bare strip
   * @param fanWidth metres, more than 0
   */
  public static double spacing(double overlap, double fanWidth) {
    Valid.finite("overlap", overlap);
    if (overlap >= 1) {
      throw new MeasureException("overlap", overlap, "less than 1");
    }
    return Valid.positive("fanWidth", fanWidth) * (1 - overlap);
  }
}
