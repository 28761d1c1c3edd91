package lapline.trade.film;

import lapline.trade.measure.Valid;

/**
 * What a film gauge adds to the truth: scatter that is new with each reading, and an offset that
 * all readings of one session share.
 *
 * @param repeatability standard deviation of repeated readings at one place, metres, 0 or more
 * @param offset standard uncertainty of the shared offset, metres, 0 or more
 */
public record GaugeError(double repeatability, double offset) {

  public GaugeError {
    Valid.notNegative("repeatability", repeatability);
    Valid.notNegative("offset", offset);
  }

  /** Where nothing is known of the gauge: the readings' scatter is all laid to the film. */
  public static GaugeError unknown() {
    return new GaugeError(0, 0);
  }
}
