package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.stroke.Departure.End;

/** Every form of every departure that is tried on a panel, and how they share a fault's prior. */
final class Forms {
  /** How far in from the ends a hand lingers or lets go, as a share of the panel's width. */
  private static final double[] LENGTHS = {0.15, 0.25};

  /** Strips lie so close that one between two of them is still met: an eighth of a fan apart. */
  private static final int STRIPS_A_FAN = 8;

  /** A pass this far beyond an edge, in fans, still shows along it. */
  private static final double BEYOND = 0.25;

  /** Strips about both edges, see {@link #fault}. */
  private static final double EDGE_STRIPS = 2 * STRIPS_A_FAN * (BEYOND + 1 / 3.0);

  /** How far inside an edge passes are still called outermost, in steps. */
  private static final double[] OUTERMOST = {-0.5, 0.5, 1.5};

  private final List<Departure> all = new ArrayList<>();
  private final PassPlan plan;
  private final int strips;

  Forms(PassPlan plan) {
    this.plan = plan;
    all.add(new Departure.Arc());
    all.add(new Departure.Along());
    all.add(new Departure.Across());
    all.add(new Departure.Tilt());
    for (double share : LENGTHS) {
      for (End end : End.values()) {
        all.add(new Departure.Ends(end, share * plan.width()));
      }
    }
    int before = all.size();
    double fan = plan.fanWidth().value();
    for (double y = -BEYOND * fan; y <= plan.height() + BEYOND * fan; y += fan / STRIPS_A_FAN) {
      all.add(new Departure.Strip(y));
    }
    this.strips = all.size() - before;
    for (double steps : OUTERMOST) {
      for (Departure.Edge edge : Departure.Edge.values()) {
        all.add(new Departure.Outermost(edge, steps * plan.meanStep()));
      }
    }
  }

  /**
   * Those that may come in beside what is in already: each kind once, strips as long as they
   * differ.
   */
  List<Departure> beside(List<Departure> in) {
    return all.stream().filter(d -> in.stream().noneMatch(i -> clash(i, d))).toList();
  }

  private static boolean clash(Departure in, Departure next) {
    return next instanceof Departure.Strip
        ? in.equals(next)
        : in.getClass().equals(next.getClass());
  }

  /** Among how many forms this fault's prior is shared out. */
  double of(Fault fault) {
    return switch (fault) {
      case LINGERING, TRIGGER_EARLY -> LENGTHS.length * End.values().length;
      case ONE_STEP -> strips / 2.0;
      case EDGES_THIN, EDGES_HEAVY ->
          OUTERMOST.length * Departure.Edge.values().length + EDGE_STRIPS;
      case ARCING, DRIFT_ALONG, DRIFT_ACROSS, TILT, STEPS_WIDE, STEPS_UNEVEN -> 1;
    };
  }

  /**
   * What a departure of this value means here. Strips within a third of a fan are about the edge.
   */
  Fault fault(Departure departure, double value) {
    if (departure instanceof Departure.Strip strip) {
      double edge = plan.fanWidth().value() / 3;
      boolean inside = strip.height() >= edge && strip.height() <= plan.height() - edge;
      return inside ? Fault.ONE_STEP : value > 0 ? Fault.EDGES_HEAVY : Fault.EDGES_THIN;
    }
    if (departure instanceof Departure.Outermost) {
      return value > 0 ? Fault.EDGES_HEAVY : Fault.EDGES_THIN;
    }
    if (departure instanceof Departure.Ends) {
      return value > 0 ? Fault.LINGERING : Fault.TRIGGER_EARLY;
    }
    return departure instanceof Departure.Arc
        ? Fault.ARCING
        : departure instanceof Departure.Along
            ? Fault.DRIFT_ALONG
            : departure instanceof Departure.Across ? Fault.DRIFT_ACROSS : Fault.TILT;
  }
}
