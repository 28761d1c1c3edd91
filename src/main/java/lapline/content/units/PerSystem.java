package lapline.content.units;

import lapline.trade.measure.UnitSystem;

/**
 * One thing in two wordings, for people who think in metric and in US units, so that each gets
 * round numbers of their own.
 */
public record PerSystem<T>(T metric, T us) {

  public T in(UnitSystem system) {
    return system == UnitSystem.US ? us : metric;
  }
}
