package lapline.demo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lapline.practice.Measurand;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * How finely an invented apprentice can read each thing off the instrument that {@code
 * measurands.yaml} names for it: nobody reads a hundredth of a millimetre off a rule. Common
 * practice, no source.
 */
final class Instruments {
  /** The smallest step that is read, in the unit that the thing is spoken of in. */
  private record Step(double metric, double us) {
    double in(UnitSystem units) {
      return units == UnitSystem.METRIC ? metric : us;
    }
  }

  private static final Step RULE = new Step(1, 1 / 16.0);
  private static final Step FADED_PATTERN = new Step(5, 0.25);
  private static final Step ROLL_OF_TAPE = new Step(0.1, 0.5);
  private static final Step DIAL_GAUGE = new Step(5, 1);
  private static final Step BEAKER = new Step(1, 0.05);
  private static final Step KNOB = new Step(0.25, 0.25);
  private static final Step THERMOMETER = new Step(0.5, 1);
  private static final Step HYGROMETER = new Step(1, 1);
  private static final Step FILM_GAUGE = new Step(1, 0.05);
  private static final Step COMB = new Step(5, 0.25);
  private static final Step GLOSS_METER = new Step(0.1, 0.1);
  private static final Step STOP_WATCH = new Step(0.1, 0.1);

  private static final Map<String, Step> STEPS = new HashMap<>();

  static {
    all(RULE, "bleed-length", "hard-edge-length", "jamb-overhang", "step-out", "room-left");
    all(RULE, "pass-spacing", "distance-start", "distance-middle", "distance-end", "stroke-length");
    all(FADED_PATTERN, "fan-width");
    all(ROLL_OF_TAPE, "tape-used");
    all(DIAL_GAUGE, "gun-pressure");
    all(BEAKER, "mix-amount");
    all(KNOB, "fluid-turns", "fan-turns");
    all(THERMOMETER, "air-temperature", "panel-temperature");
    all(HYGROMETER, "humidity");
    all(FILM_GAUGE, "film-before", "film-after");
    all(COMB, "wet-film");
    all(GLOSS_METER, "gloss-60", "gloss-20");
    all(STOP_WATCH, "stroke-time");
  }

  private Instruments() {}

  private static void all(Step step, String... measurands) {
    List.of(measurands).forEach(m -> STEPS.put(m, step));
  }

  /** The value that is read, in SI; as it is where it is counted, chosen or read from a clock. */
  static double read(Measurand measurand, double si, UnitSystem units) {
    Step step = STEPS.get(measurand.id());
    if (step == null) {
      return si;
    }
    Unit unit = measurand.spoken().in(units);
    double least = step.in(units);
    return unit.toSi(Math.rint(unit.fromSi(si) / least) * least);
  }
}
