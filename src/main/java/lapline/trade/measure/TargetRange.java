package lapline.trade.measure;

/**
 * The range a true value should lie in, in the SI unit of the quantity; either end may be open.
 *
 * @param least lower limit; negative infinity for none
 * @param most upper limit; positive infinity for none
 */
public record TargetRange(double least, double most) {

  public TargetRange {
    if (Double.isNaN(least) || Double.isNaN(most) || least > most) {
      throw new MeasureException("least", least, "a number not above most (" + most + ")");
    }
  }

  public static TargetRange atLeast(double least) {
    return new TargetRange(least, Double.POSITIVE_INFINITY);
  }

  public static TargetRange atMost(double most) {
    return new TargetRange(Double.NEGATIVE_INFINITY, most);
  }

  public boolean hasLeast() {
    return least != Double.NEGATIVE_INFINITY;
  }

  public boolean hasMost() {
    return most != Double.POSITIVE_INFINITY;
  }

  /** Whether a bare value lies in the range; a value on a limit does. */
  public boolean contains(double value) {
    return value >= least && value <= most;
  }

  /** How far a value lies outside: negative below, positive above, 0 inside. */
  public double outsideBy(double value) {
    return value < least ? value - least : value > most ? value - most : 0;
  }
}
