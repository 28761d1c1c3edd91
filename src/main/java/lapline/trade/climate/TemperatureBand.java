package lapline.trade.climate;

/**
 * A stretch of temperature for which a product's sheet says one thing, such as 'slow reducer from
 * 25 °C'. What it says is up to who implements it.
 *
 * <p>Both ends in °C, the lower one part of the band, the upper one the beginning of the next.
 */
public interface TemperatureBand {

  /** Lower end, °C, itself in the band. */
  double from();

  /** Upper end, °C, above the lower one; itself in the band only where no further band follows. */
  double to();
}
