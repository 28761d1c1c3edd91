package lapline.trade.hiding;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * What the surface of a glossy film adds to and takes from its reflectance: the light that never
 * enters and the light that is thrown back inside. The two-constant theory wants it taken off.
 *
 * <p>R inside = (R − k₁) / (1 − k₁ − k₂ + k₂ R). Source: Saunderson, J. Opt. Soc. Am. 32:727, 1942,
 * from memory; k₁ about 0.04 and k₂ 0.4 to 0.6 for a resin of index 1.5.
 *
 * @param outside k₁, share of light that is reflected before it enters, 0 to below 0.5
 * @param inside k₂, share of light that is thrown back inside, 0 to below 1; both together below 1
 */
public record GlossSurface(double outside, double inside) {

  public GlossSurface {
    Valid.between("outside", outside, 0, Math.nextDown(0.5));
    Valid.between("inside", inside, 0, Math.nextDown(1.0));
    Valid.positive("1 − outside − inside", 1 - outside - inside);
  }

  /**
   * Reflectance inside the film from the one measured.
   *
   * @param measured with the gloss in it, {@code outside} to 1
   * @return 0 to 1
   */
  public double takenOff(double measured) {
    if (!(measured >= outside && measured <= 1)) {
      throw new MeasureException("measured", measured, outside + " to 1");
    }
    return (measured - outside) / (1 - outside - inside + inside * measured);
  }

  /**
   * The other way round: what an instrument reads that sees the gloss.
   *
   * @param internal reflectance inside the film, 0 to 1
   */
  public double putOn(double internal) {
    Valid.between("internal", internal, 0, 1);
    return outside + (1 - outside) * (1 - inside) * internal / (1 - inside * internal);
  }
}
