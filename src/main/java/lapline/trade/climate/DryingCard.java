package lapline.trade.climate;

import java.util.List;
import java.util.Optional;
import lapline.trade.measure.MeasureException;

/**
 * Flash or cure times of one product, as the workshop entered them from its sheet.
 *
 * @param sheet title and date of the sheet, so that a time can be traced; not blank
 * @param bands what it says, for neighbouring temperatures
 */
public record DryingCard(String sheet, TemperatureBands<DryingBand> bands) {

  public DryingCard {
    if (sheet.isBlank()) {
      throw new MeasureException("letters of sheet", 0, "1 or more");
    }
  }

  /**
   * @param bands at least one, coldest first, without gap or overlap
   */
  public static DryingCard of(String sheet, List<DryingBand> bands) {
    return new DryingCard(sheet, new TemperatureBands<>(bands));
  }

  /**
   * What the sheet says.
   *
   * @param temperature °C, of air or panel as the sheet means it, finite
   * @return empty where it says nothing of this temperature
   */
  public Optional<DryingTime> at(double temperature) {
    return bands.at(temperature).map(DryingBand::time);
  }
}
