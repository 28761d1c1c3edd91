package lapline.practice.quantity;

import static lapline.practice.quantity.Recorded.estimate;
import static lapline.practice.quantity.Recorded.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Working;
import lapline.practice.Reading;
import lapline.practice.quantity.Measured.Value;
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
  static Optional<Measured> distanceMean(MeasuredPanel panel) {
    List<Value> values = new ArrayList<>();
    passes(panel.entry()).forEach((pass, along) -> values.add(Value.of(pass, mean(along))));
    return Measured.of(values, new Working("formula.distance-mean", "source.plain", List.of()));
  }

  private static Estimate mean(Map<String, Estimate> along) {
    double sum = 0;
    List<Gum.Part> parts = new ArrayList<>();
    for (Estimate distance : along.values()) {
      sum += distance.value();
      parts.add(new Gum.Part(1.0 / along.size(), distance));
    }
    return Gum.combine(sum / along.size(), parts);
  }

  /** End less start of each pass: positive where the gun moves away from the panel. */
  static Optional<Measured> distanceDrift(MeasuredPanel panel) {
    List<Value> values = new ArrayList<>();
    passes(panel.entry())
        .forEach(
            (pass, along) -> {
              if (along.containsKey(START) && along.containsKey(END)) {
                values.add(Value.of(pass, drift(along)));
              }
            });
    return Measured.of(values, new Working("formula.distance-drift", "source.plain", List.of()));
  }

  private static Estimate drift(Map<String, Estimate> along) {
    Estimate start = along.get(START);
    return GunDistance.along(start, along.getOrDefault(MIDDLE, start), along.get(END)).drift();
  }

  /** Speed of each pass: the length of a stroke over its time. */
  static Optional<Measured> strokeSpeed(MeasuredPanel panel) {
    // without a length the stroke is taken from edge to edge of the panel
    Estimate length =
        new Recorded(panel.entry())
            .once("stroke-length")
            .orElse(Estimate.of(panel.task().panel().width(), 0.002));
    List<Value> values = new ArrayList<>();
    for (Reading time : panel.entry().of("stroke-time")) {
      values.add(Value.of(time.cell(), StrokeSpeed.of(length, estimate(time))));
    }
    return Measured.of(
        values,
        new Working(
            "formula.stroke-speed",
            "source.plain",
            List.of(input("stroke-length", length, Dimension.LENGTH))));
  }

  /** Overlap of each pass with the one before: 1 − spacing / fan width. */
  static Optional<Measured> overlap(MeasuredPanel panel) {
    Optional<Estimate> fan = new Recorded(panel.entry()).once("fan-width");
    List<Reading> spacings = panel.entry().of("pass-spacing");
    if (fan.isEmpty() || spacings.isEmpty()) {
      return Optional.empty();
    }
    List<Value> values = new ArrayList<>();
    for (Reading spacing : spacings) {
      values.add(Value.of(spacing.cell(), Overlap.of(estimate(spacing), fan.get())));
    }
    return Measured.of(
        values,
        new Working(
            "formula.overlap",
            "source.overlap",
            List.of(input("fan-width", fan.get(), Dimension.LENGTH))));
  }

  /** Passes with at least one reading of the distance, in order, with what was read along them. */
  private static Map<Cell, Map<String, Estimate>> passes(PanelEntry entry) {
    Map<Cell, Map<String, Estimate>> passes = new TreeMap<>();
    for (String where : ALONG) {
      for (Reading r : entry.of(where)) {
        Cell pass = Cell.pass("distance", r.cell().coat(), r.cell().pass());
        passes.computeIfAbsent(pass, p -> new LinkedHashMap<>()).put(where, r.estimate());
      }
    }
    return passes;
  }
}
