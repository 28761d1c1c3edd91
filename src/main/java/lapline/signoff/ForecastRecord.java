package lapline.signoff;

/**
 * How a workshop's forecasts have turned out. A forecast is due when the rule is met, or when its
 * upper end has passed; nothing is known yet of those that are open.
 *
 * @param due how many are due
 * @param held in how many of those the true number lay in the interval
 * @param open how many are not due
 * @param people of how many different people those are that are due
 * @param promised how many should have held by what each said of itself
 */
public record ForecastRecord(long due, long held, long open, long people, double promised) {

  /** The share that held, 0 to 1; 0 where none is due. */
  public double share() {
    return due == 0 ? 0 : (double) held / due;
  }

  /** The share that should have held, 0 to 1; 0 where none is due. */
  public double promisedShare() {
    return due == 0 ? 0 : promised / due;
  }
}
