package lapline.trade.measure;

/**
 * The best value of a quantity with its standard uncertainty, both in the SI unit of the quantity.
 *
 * @param value the best value; finite
 * @param standardUncertainty one standard deviation of what the true value may be; finite, ≥ 0
 * @param degreesOfFreedom effective degrees of freedom, > 0; infinite where the uncertainty is
 *     taken as known
 */
public record Estimate(double value, double standardUncertainty, double degreesOfFreedom) {

  public Estimate {
    if (!Double.isFinite(value)) {
      throw new MeasureException("value", value, "a finite number");
    }
    if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
      throw new MeasureException("standardUncertainty", standardUncertainty, "0 or more, finite");
    }
    if (!(degreesOfFreedom > 0)) {
      throw new MeasureException("degreesOfFreedom", degreesOfFreedom, "more than 0");
    }
  }

  /** A value whose uncertainty is taken as known. */
  public static Estimate of(double value, double standardUncertainty) {
    return new Estimate(value, standardUncertainty, Double.POSITIVE_INFINITY);
  }
}
