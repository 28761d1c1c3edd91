package lapline.practice.quantity;

import static lapline.practice.quantity.Recorded.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore.Working;
import lapline.practice.Reading;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.blend.BlendRoom;
import lapline.trade.blend.BlendRoom.EdgeRoom;
import lapline.trade.blend.Corner;
import lapline.trade.blend.Outline;
import lapline.trade.blend.StepOut;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/** How the coats of a blend step out from the primer spot, and the room they leave. */
final class BlendQuantities {
  private static final String STEP_OUT = "step-out";

  private BlendQuantities() {}

  /** Room from the last coat to the panel's nearest edge, by the panel drawing. */
  static Optional<Measured> room(MeasuredPanel panel) {
    List<Reading> reaches = panel.entry().of(STEP_OUT);
    Optional<Outline> spot = spot(panel.task().panel());
    if (reaches.isEmpty() || spot.isEmpty()) {
      return Optional.empty();
    }
    Reading last = reaches.get(reaches.size() - 1);
    Estimate reach = Recorded.estimate(last);
    EdgeRoom least = new BlendRoom(panel(panel.task().panel()), spot.get()).least(reach);
    return Measured.of(
        List.of(Value.of(last.cell(), least.left())),
        new Working(
            "formula.blend-room",
            "source.geometry",
            List.of(input(STEP_OUT, reach, Dimension.LENGTH))));
  }

  /** How far each coat after the first goes past the one before. */
  static Optional<Measured> steps(MeasuredPanel panel) {
    List<Reading> reaches = panel.entry().of(STEP_OUT);
    if (reaches.size() < 2) {
      return Optional.empty();
    }
    List<Estimate> steps = new StepOut(reaches.stream().map(Recorded::estimate).toList()).steps();
    List<Value> values = new ArrayList<>();
    for (int i = 1; i < steps.size(); i++) {
      values.add(Value.of(Cell.coat(STEP_OUT, reaches.get(i).cell().coat()), steps.get(i)));
    }
    return Measured.of(values, new Working("formula.step-out-order", "source.geometry", List.of()));
  }

  private static Outline panel(PanelOutline panel) {
    return panel.outline().isEmpty()
        ? Outline.rectangle(0, 0, panel.width(), panel.height())
        : new Outline(panel.outline().stream().map(p -> new Corner(p.x(), p.y())).toList());
  }

  private static Optional<Outline> spot(PanelOutline panel) {
    return panel.features().stream()
        .filter(f -> f.kind().equals("spot"))
        .findFirst()
        .map(f -> new Outline(f.corners().stream().map(p -> new Corner(p.x(), p.y())).toList()));
  }
}
