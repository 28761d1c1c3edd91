package lapline.practice.quantity;

import static lapline.practice.quantity.Recorded.estimate;
import static lapline.practice.quantity.Recorded.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Working;
import lapline.practice.Reading;
import lapline.practice.quantity.Measured.Missing;
import lapline.practice.quantity.Measured.Value;
import lapline.practice.quantity.Measured.Values;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.spray.GunDistance;
import lapline.trade.spray.Overlap;
import lapline.trade.spray.StrokeSpeed;

/** How the gun was held and moved: distance, its drift, speed, overlap. */
final class GunQuantities {
  private static final String START = "distance-start";
  private static final String MIDDLE = "distance-middle";
  private static final String END = "distance-end";
  private static final List<String> ALONG = List.of(START, MIDDLE, END);

  private GunQuantities() {}

  /** Mean distance of each pass, from its readings at the start, the middle and the end. */
  static Measured distanceMean(MeasuredPanel panel) {
    List<Value> values = new ArrayList<>();
    for (Cell pass : passes(panel.entry())) {
      List<Estimate> along = along(panel.entry(), pass);
      double sum = along.stream().mapToDouble(Estimate::value).sum();
      List<Gum.Part> parts = along.stream().map(d -> new Gum.Part(1.0 / along.size(), d)).toList();
      values.add(Value.of(pass, Gum.combine(sum / along.size(), parts)));
    }
    return values.isEmpty()
        ? Missing.of(START, MIDDLE, END)
        : new Values(values, new Working("formula.distance-mean", "source.plain", List.of()));
  }

  /** End less start of each pass: positive where the gun moves away from the panel. */
  static Measured distanceDrift(MeasuredPanel panel) {
    List<Value> values = new ArrayList<>();
    for (Cell pass : passes(panel.entry())) {
      Optional<Estimate> start = at(panel.entry(), pass, START);
      Optional<Estimate> end = at(panel.entry(), pass, END);
      if (start.isPresent() && end.isPresent()) {
        Estimate middle = at(panel.entry(), pass, MIDDLE).orElse(start.get());
        values.add(Value.of(pass, GunDistance.along(start.get(), middle, end.get()).drift()));
      }
    }
    return values.isEmpty()
        ? Missing.of(START, END)
        : new Values(values, new Working("formula.distance-drift", "source.plain", List.of()));
  }

  /** Speed of each pass: the length of a stroke over its time. */
  static Measured strokeSpeed(MeasuredPanel panel) {
    // without a length the stroke is taken from edge to edge of the panel
    Estimate length =
        new Recorded(panel.entry())
            .once("stroke-length")
            .orElse(Estimate.of(panel.task().panel().width(), 0.002));
    List<Value> values = new ArrayList<>();
    for (Reading time : panel.entry().of("stroke-time")) {
      values.add(Value.of(time.cell(), StrokeSpeed.of(length, estimate(time))));
    }
    return values.isEmpty()
        ? Missing.of("stroke-time")
        : new Values(
            values,
            new Working(
                "formula.stroke-speed",
                "source.plain",
                List.of(input("stroke-length", length, Dimension.LENGTH))));
  }

  /** Overlap of each pass with the one before: 1 − spacing / fan width. */
  static Measured overlap(MeasuredPanel panel) {
    Optional<Estimate> fan = new Recorded(panel.entry()).once("fan-width");
    List<Reading> spacings = panel.entry().of("pass-spacing");
    if (fan.isEmpty() || spacings.isEmpty()) {
      return Missing.of("pass-spacing", "fan-width");
    }
    List<Value> values = new ArrayList<>();
    for (Reading spacing : spacings) {
      values.add(Value.of(spacing.cell(), Overlap.of(estimate(spacing), fan.get())));
    }
    return new Values(
        values,
        new Working(
            "formula.overlap",
            "source.overlap",
            List.of(input("fan-width", fan.get(), Dimension.LENGTH))));
  }

  /** Passes with at least one reading of the distance, in order. */
  private static List<Cell> passes(PanelEntry entry) {
    return ALONG.stream()
        .flatMap(where -> entry.of(where).stream())
        .map(r -> Cell.pass("distance", r.cell().coat(), r.cell().pass()))
        .distinct()
        .sorted()
        .toList();
  }

  private static List<Estimate> along(PanelEntry entry, Cell pass) {
    return ALONG.stream().flatMap(where -> at(entry, pass, where).stream()).toList();
  }

  private static Optional<Estimate> at(PanelEntry entry, Cell pass, String where) {
    return entry.at(Cell.pass(where, pass.coat(), pass.pass())).map(Recorded::estimate);
  }
}
