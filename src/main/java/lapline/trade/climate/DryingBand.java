package lapline.trade.climate;

import lapline.trade.climate.DryingTime.Basis;

/**
 * One line of a product card: at these temperatures, so long.
 *
 * @param from °C, itself in the band
 * @param to °C, above {@code from}
 * @param least seconds, 0 or more
 * @param most seconds, not below {@code least}; infinite where the sheet gives no end
 */
public record DryingBand(double from, double to, double least, double most)
    implements TemperatureBand {

  public DryingBand {
    new DryingTime(least, most, Basis.PRODUCT_CARD);
  }

  /** What the sheet says for any temperature of the band. */
  public DryingTime time() {
    return new DryingTime(least, most, Basis.PRODUCT_CARD);
  }
}
