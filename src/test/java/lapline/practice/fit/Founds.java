package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.Departure;
import lapline.trade.stroke.Fault;
import lapline.trade.stroke.StrokeReading.Found;

/** Each fault in each form that it can have, for tests of its words. */
final class Founds {
  private static final double FILM = 8e-6;

  /** Of a mean film of 57 µm too little to be seen. */
  private static final double HIDDEN = 2e-6;

  private Founds() {}

  static List<Found> all() {
    List<Found> all = new ArrayList<>();
    all.add(found(Fault.STEPS_WIDE, null, 0.4, FILM));
    all.add(found(Fault.STEPS_WIDE, null, 0.4, HIDDEN));
    all.add(found(Fault.STEPS_UNEVEN, null, 0.6));
    all.add(found(Fault.ARCING, new Departure.Arc(), 0.3));
    for (double value : new double[] {-0.3, 0.3}) {
      all.add(found(Fault.DRIFT_ALONG, new Departure.Along(), value));
      all.add(found(Fault.DRIFT_ACROSS, new Departure.Across(), value));
      all.add(found(Fault.TILT, new Departure.Tilt(), value));
      all.add(found(Fault.ONE_STEP, new Departure.Strip(0.2), value));
      for (Departure.End end : Departure.End.values()) {
        Fault fault = value > 0 ? Fault.LINGERING : Fault.TRIGGER_EARLY;
        all.add(found(fault, new Departure.Ends(end, 0.1), value));
      }
      Fault edges = value > 0 ? Fault.EDGES_HEAVY : Fault.EDGES_THIN;
      for (Departure.Edge edge : Departure.Edge.values()) {
        all.add(found(edges, new Departure.Outermost(edge, 0.03), value));
      }
      for (double height : new double[] {0, Panels.HEIGHT}) {
        all.add(found(edges, new Departure.Strip(height), value));
      }
    }
    return all;
  }

  private static Found found(Fault fault, Departure departure, double value) {
    return found(fault, departure, value, FILM);
  }

  private static Found found(Fault fault, Departure departure, double value, double film) {
    return new Found(
        fault,
        Optional.ofNullable(departure),
        Estimate.of(value, 0.05),
        Estimate.of(film, 1e-6),
        0.95,
        6e-6,
        List.of(),
        List.of());
  }
}
