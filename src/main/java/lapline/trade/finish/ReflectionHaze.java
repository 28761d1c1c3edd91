package lapline.trade.finish;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * The milky veil round a reflection, as the gloss at 60° less the gloss at 20°: the more light is
 * strewn near the mirror angle, the more the narrow angle loses.
 *
 * <p>Source: ASTM D4039 (from memory), for high gloss. A rank among films of like refractive index
 * only, since even a perfectly smooth film reads apart at the two angles ({@link SmoothGloss}).
 */
public final class ReflectionHaze {

  private ReflectionHaze() {}

  /**
   * Haze index in gloss units, negative where the film is smoother than its index says.
   *
   * @param glossAt60 gloss units, above 70, or the film is not glossy enough to have haze
   * @param glossAt20 gloss units, 0 or more
   * @return uncertainties of the two taken as independent
   */
  public static Estimate of(Estimate glossAt60, Estimate glossAt20) {
    if (!(glossAt60.value() > 70)) {
      throw new MeasureException("glossAt60", glossAt60.value(), "above 70");
    }
    Valid.notNegative("glossAt20", glossAt20.value());
    return Gum.difference(glossAt60, glossAt20);
  }
}
