package lapline.trade.measure;

/**
 * The unit in which people of each system speak of one quantity: a job takes minutes and a stroke
 * seconds, though both are times, and a fluid tip is in millimetres wherever it is screwed in.
 *
 * <p>It is the unit a bare number is read in, and the one that readings and limits are written in.
 *
 * @param metric what metric people say
 * @param us what people of US units say; of the same dimension
 */
public record SpokenUnits(Unit metric, Unit us) {

  public SpokenUnits {
    if (metric.dimension() != us.dimension()) {
      throw new MeasureException(
          "us", us, "a unit of " + metric.dimension() + ", as " + metric + " is");
    }
  }

  /** The units of a dimension where nothing else is said. */
  public static SpokenUnits usual(Dimension dimension) {
    return new SpokenUnits(
        Unit.preferred(dimension, UnitSystem.METRIC), Unit.preferred(dimension, UnitSystem.US));
  }

  /** What this system's people say. */
  public Unit in(UnitSystem system) {
    return system == UnitSystem.US ? us : metric;
  }

  /** What the other system's people say. */
  public Unit beside(UnitSystem system) {
    return system == UnitSystem.US ? metric : us;
  }

  /** What both units measure. */
  public Dimension dimension() {
    return metric.dimension();
  }
}
