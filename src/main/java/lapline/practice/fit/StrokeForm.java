package lapline.practice.fit;

import java.util.Locale;
import lapline.trade.stroke.Departure;
import lapline.trade.stroke.Fault;
import lapline.trade.stroke.StrokeReading;
import lapline.trade.stroke.StrokeReading.Found;

/** Which form of a cause was found, as the end of a message key; empty where there is but one. */
final class StrokeForm {
  private StrokeForm() {}

  /**
   * @param height of the panel, metres
   * @param mean film of the panel, metres
   */
  static String of(Found found, double height, double mean) {
    double value = found.value().value();
    Departure departure = found.departure().orElse(null);
    if (found.fault() == Fault.STEPS_UNEVEN) {
      return ".written";
    }
    if (found.fault() == Fault.STEPS_WIDE) {
      return found.film().value() < StrokeReading.MATERIAL * mean ? ".hidden" : "";
    }
    if (departure instanceof Departure.Arc) {
      return ".ends";
    }
    if (departure instanceof Departure.Ends ends) {
      return "." + ends.end().name().toLowerCase(Locale.ROOT);
    }
    if (departure instanceof Departure.Along) {
      return value > 0 ? ".right" : ".left";
    }
    if (departure instanceof Departure.Across || departure instanceof Departure.Tilt) {
      return value > 0 ? ".upper" : ".lower";
    }
    if (departure instanceof Departure.Strip strip) {
      return found.fault() == Fault.ONE_STEP
          ? value > 0 ? ".thick" : ".thin"
          : strip.height() > height / 2 ? ".upper" : ".lower";
    }
    if (departure instanceof Departure.Outermost outermost) {
      return "." + outermost.edge().name().toLowerCase(Locale.ROOT);
    }
    return "";
  }
}
