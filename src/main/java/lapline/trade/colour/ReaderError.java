package lapline.trade.colour;

import lapline.trade.measure.Valid;

/**
 * What a colour reader and the place it is set down on do to one reading: standard uncertainties of
 * the coordinates, independent of each other.
 *
 * @param lightness of L*, 0 or more
 * @param colour of a* and of b*, 0 or more
 */
public record ReaderError(double lightness, double colour) {

  public ReaderError {
    Valid.notNegative("lightness", lightness);
    Valid.notNegative("colour", colour);
  }

  /** Of the mean of several readings, each set down afresh. */
  public ReaderError ofMean(int readings) {
    double root = Math.sqrt(Valid.positive("readings", readings));
    return new ReaderError(lightness / root, colour / root);
  }

  /** Of the difference between a reading with this error and one with that. */
  ReaderError and(ReaderError other) {
    return new ReaderError(
        Math.hypot(lightness, other.lightness), Math.hypot(colour, other.colour));
  }
}
