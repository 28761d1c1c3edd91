package lapline.trade.measure;

/**
 * The range a true value should lie in, in the SI unit of the quantity; either end may be open.
 *
 * @param least lower limit; negative infinity for none
 * @param most upper limit; positive infinity for none
 */
public record TargetRange(double least, double most) {

  public TargetRange {
    boolean noNumber = least == Double.POSITIVE_INFINITY || most == Double.NEGATIVE_INFINITY;
    if (noNumber || !(least <= most)) {
      throw new MeasureException("least", least, "a number not above most (" + most + ")");
    }
  }

  /** A range open above; in the SI unit of the quantity. */
  public static TargetRange atLeast(double least) {
    return new TargetRange(least, Double.POSITIVE_INFINITY);
  }

  /** A range open below; in the SI unit of the quantity. */
  public static TargetRange atMost(double most) {
    return new TargetRange(Double.NEGATIVE_INFINITY, most);
  }

  /** Whether it has a lower limit. */
  public boolean hasLeast() {
    return least != Double.NEGATIVE_INFINITY;
  }

  /** Whether it has an upper limit. */
  public boolean hasMost() {
    return most != Double.POSITIVE_INFINITY;
  }

  /** Whether a bare value lies in the range; a value on a limit does, no number (NaN) never. */
  public boolean contains(double value) {
    return value >= least && value <= most;
  }

  /** How far a value lies outside: negative below, positive above, 0 inside and for NaN. */
  public double outsideBy(double value) {
    return value < least ? value - least : value > most ? value - most : 0;
  }
}
