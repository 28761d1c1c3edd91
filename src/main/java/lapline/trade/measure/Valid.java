package lapline.trade.measure;

/** The valid range of an argument, checked where it enters a formula; hands the value back. */
public final class Valid {
  private Valid() {}

  /**
   * @throws MeasureException unless the value is finite
   */
  public static double finite(String argument, double value) {
    if (!Double.isFinite(value)) {
      throw new MeasureException(argument, value, "a finite number");
    }
    return value;
  }

  /**
   * @throws MeasureException unless the value is finite and more than 0
   */
  public static double positive(String argument, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new MeasureException(argument, value, "more than 0");
    }
    return value;
  }

  /**
   * @throws MeasureException unless the value is finite and 0 or more
   */
  public static double notNegative(String argument, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new MeasureException(argument, value, "0 or more");
    }
    return value;
  }

  /**
   * @param least lowest valid value, itself valid
   * @param most highest valid value, itself valid
   * @throws MeasureException unless the value lies between them
   */
  public static double between(String argument, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new MeasureException(argument, value, least + " to " + most);
    }
    return value;
  }

  /**
   * A share of a whole that may be all of it but not none, such as volume solids.
   *
   * @throws MeasureException unless the value is more than 0 and at most 1
   */
  public static double share(String argument, double value) {
    if (!(value > 0 && value <= 1)) {
      throw new MeasureException(argument, value, "more than 0, at most 1");
    }
    return value;
  }
}
