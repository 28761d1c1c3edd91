package lapline.trade.measure;

/**
 * A result computed from independent measured quantities, gathering its uncertainty term by term to
 * first order.
 *
 * <p>u² = Σ (cᵢ uᵢ)², with cᵢ the slope of the result against quantity i; degrees of freedom by
 * Welch–Satterthwaite, u⁴ / Σ (cᵢ uᵢ)⁴/νᵢ. Source: JCGM 100:2008, (10) and (G.2b), numbers from
 * memory.
 */
public final class FirstOrder {
  private final double value;
  private double variance;
  private double fourths;

  private FirstOrder(double value) {
    this.value = value;
  }

  public static FirstOrder of(double value) {
    return new FirstOrder(value);
  }

  /**
   * @param slope change of the result per change of the quantity; finite
   */
  public FirstOrder term(double slope, Estimate quantity) {
    double part = slope * quantity.standardUncertainty();
    variance += part * part;
    fourths += part * part * part * part / quantity.degreesOfFreedom();
    return this;
  }

  public Estimate estimate() {
    double freedom = fourths > 0 ? variance * variance / fourths : Double.POSITIVE_INFINITY;
    return new Estimate(value, Math.sqrt(variance), freedom);
  }
}
