package lapline.trade.measure;

/** An argument outside its valid range: names the argument, its value and the valid range. */
public final class MeasureException extends IllegalArgumentException {
  private final String argument;
  private final double given;
  private final String validRange;

  public MeasureException(String argument, double given, String validRange) {
    super(argument + " is " + given + "; it must be " + validRange);
    this.argument = argument;
    this.given = given;
    this.validRange = validRange;
  }

  public String argument() {
    return argument;
  }

  public double given() {
    return given;
  }

  public String validRange() {
    return validRange;
  }
}
