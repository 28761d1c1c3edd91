package lapline.trade.mixing;

import lapline.trade.climate.TemperatureBand;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * One line of a product card: at these temperatures, this reducer, so much of it.
 *
 * @param reducer its name on the sheet, not blank
 * @param from °C, itself in the band
 * @param to °C, above {@code from}; belongs to the next band where there is one
 * @param share reducer per volume of what the card takes it of, 0 (ready to spray) to 2: 0.10 for
 *     10 %
 */
public record ReducerBand(String reducer, double from, double to, double share)
    implements TemperatureBand {

  public ReducerBand {
    if (reducer.isBlank()) {
      throw new MeasureException("letters of reducer", 0, "1 or more");
    }
    Valid.between("share", share, 0, 2);
  }
}
