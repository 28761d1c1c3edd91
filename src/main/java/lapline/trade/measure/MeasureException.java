package lapline.trade.measure;

/** An argument outside its valid range: names the argument, its value and the valid range. */
public final class MeasureException extends IllegalArgumentException {
  private final String argument;
  private final double given;
  private final String validRange;

  /**
   * @param argument as its formula calls it
   * @param given the value refused, in SI; for a list, how many it has
   * @param validRange in words: 'more than 0', '2 or more'
   */
  public MeasureException(String argument, double given, String validRange) {
    super(argument + " is " + given + "; it must be " + validRange);
    this.argument = argument;
    this.given = given;
    this.validRange = validRange;
  }

  /**
   * For an argument that is no number, such as a unit of another dimension.
   *
   * @param given the value refused, as it is called; {@link #given()} is NaN
   */
  public MeasureException(String argument, Enum<?> given, String validRange) {
    super(argument + " is " + given + "; it must be " + validRange);
    this.argument = argument;
    this.given = Double.NaN;
    this.validRange = validRange;
  }

  /** What was refused, as its formula calls it. */
  public String argument() {
    return argument;
  }

  /** The value that was refused; NaN where it was no number. */
  public double given() {
    return given;
  }

  /** What it has to be, in words. */
  public String validRange() {
    return validRange;
  }
}
