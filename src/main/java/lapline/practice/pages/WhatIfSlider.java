package lapline.practice.pages;

import lapline.practice.SprayPlan.Thing;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * The slider beside a number of the what-if page, in the reader's units and in round steps: over
 * what people spray with, and on to the number itself where that lies outside.
 */
public record WhatIfSlider(double least, double most, double step, double at) {
  private static final int STEPS = 60;

  /**
   * @param value SI
   */
  static WhatIfSlider of(Thing thing, double value, UnitSystem units) {
    Unit unit = Unit.preferred(thing.dimension(), units);
    double[] usual = usual(thing);
    double from = unit.fromSi(Math.min(usual[0], value));
    double to = unit.fromSi(Math.max(usual[1], value));
    double step = thing == Thing.COATS ? 1 : round((to - from) / STEPS * (1 + 1e-9));
    return new WhatIfSlider(
        on(step, Math.ceil(from / step - 1e-9)),
        on(step, Math.ceil(to / step - 1e-9)),
        step,
        unit.fromSi(value));
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

  /** 1, 2 or 5 in its decade, not above what is asked. */
  private static double round(double step) {
    double decade = Math.pow(10, Math.floor(Math.log10(step)));
    double figure = step / decade;
    return decade * (figure >= 5 ? 5 : figure >= 2 ? 2 : 1);
  }

  /** So many steps, without the noise of a binary product. */
  private static double on(double step, double count) {
    return Math.round(step * count * 1e6) / 1e6;
  }
}
