package lapline.practice.pages;

import lapline.practice.SprayPlan.Thing;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * The slider beside a number of the what-if page, in the reader's units: over what people spray
 * with, and on to the number itself where that lies outside. Its steps are counted from the number,
 * so that it stands on it whatever it is, and one press of an arrow key goes on by one step.
 */
public record WhatIfSlider(double least, double most, double step, double at) {
  /**
   * @param value SI
   */
  static WhatIfSlider of(Thing thing, double value, UnitSystem units) {
    Unit unit = Unit.preferred(thing.dimension(), units);
    double[] usual = usual(thing);
    double at = unit.fromSi(value);
    double step = step(unit);
    double down = Math.floor((at - unit.fromSi(usual[0])) / step + 1e-9);
    double up = Math.floor((unit.fromSi(usual[1]) - at) / step + 1e-9);
    return new WhatIfSlider(
        clean(at - step * Math.max(0, down)), clean(at + step * Math.max(0, up)), step, clean(at));
  }

  /** A value in SI on the nearest whole number of steps. */
  static double rounded(Thing thing, double value, UnitSystem units) {
    Unit unit = Unit.preferred(thing.dimension(), units);
    double step = step(unit);
    return unit.toSi(step * Math.round(unit.fromSi(value) / step));
  }

  /** What a hand or a gauge can tell apart. */
  private static double step(Unit unit) {
    return switch (unit) {
      case MIL -> 0.05;
      case INCH -> 0.1;
      case INCH_PER_SECOND -> 0.5;
      case MILLIMETRE_PER_SECOND -> 10;
      default -> 1;
    };
  }

  /** From small spot guns to wide full-size ones, in SI; common practice, no source. */
  private static double[] usual(Thing thing) {
    return switch (thing) {
      case WET_FILM -> new double[] {10e-6, 150e-6};
      case SOLIDS -> new double[] {0.1, 1};
      case REDUCER -> new double[] {0, 1};
      case SPACING -> new double[] {0.02, 0.3};
      case FAN_WIDTH -> new double[] {0.06, 0.4};
      case DISTANCE -> new double[] {0.05, 0.35};
      case SPEED -> new double[] {0.1, 1};
      case COATS -> new double[] {1, 6};
    };
  }

  /** Without the noise of a binary product. */
  private static double clean(double value) {
    return Math.round(value * 1e6) / 1e6;
  }
}
