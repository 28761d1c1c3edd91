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

  /**
   * An estimate as it was kept.
   *
   * @param degreesOfFreedom more than 0; null where the uncertainty is taken as known, as all were
   *     before their degrees of freedom were kept
   */
  public static Estimate of(double value, double standardUncertainty, Double degreesOfFreedom) {
    return degreesOfFreedom == null
        ? of(value, standardUncertainty)
        : new Estimate(value, standardUncertainty, degreesOfFreedom);
  }

  /** The degrees of freedom to be kept; null where the uncertainty is taken as known. */
  public Double keptDegreesOfFreedom() {
    return Double.isInfinite(degreesOfFreedom) ? null : degreesOfFreedom;
  }

  /**
   * The x of 'value ± x': half the width of the interval that holds the true value with 95.45 %
   * probability, in the unit of the value. It is twice the standard uncertainty where that is well
   * known and more where it rests on few readings ({@link Gum#coverageFactor}), by the same error
   * as {@link Conformance#probability} has, so that the two never contradict each other.
   */
  public double expandedUncertainty() {
    return Gum.coverageFactor(degreesOfFreedom) * standardUncertainty;
  }
}
