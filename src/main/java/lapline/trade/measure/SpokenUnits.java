package lapline.trade.measure;

/**
 * The unit in which people of each system speak of one quantity: a job takes minutes and a stroke
 * seconds, though both are times, and a fluid tip is in millimetres wherever it is screwed in.
 *
 * <p>It is the unit a bare number is read in, and the one that readings and limits are written in.
 */
public record SpokenUnits(Unit metric, Unit us) {

  public SpokenUnits {
    if (metric.dimension() != us.dimension()) {
      throw new IllegalArgumentException(metric + " and " + us + " measure different things");
    }
  }

  /** The units of a dimension where nothing else is said. */
  public static SpokenUnits usual(Dimension dimension) {
    return new SpokenUnits(
        Unit.preferred(dimension, UnitSystem.METRIC), Unit.preferred(dimension, UnitSystem.US));
  }

  public Unit in(UnitSystem system) {
    return system == UnitSystem.US ? us : metric;
  }

  /** What the other system's people say. */
  Unit beside(UnitSystem system) {
    return system == UnitSystem.US ? metric : us;
  }

  public Dimension dimension() {
    return metric.dimension();
  }
}
