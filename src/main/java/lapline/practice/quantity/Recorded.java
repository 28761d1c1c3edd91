package lapline.practice.quantity;

import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Input;
import lapline.practice.Reading;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/** The readings of a panel as estimates, the way the computed quantities want them. */
final class Recorded {
  private final PanelEntry entry;

  Recorded(PanelEntry entry) {
    this.entry = entry;
  }

  Optional<Estimate> once(String measurand) {
    return entry.at(Cell.panel(measurand)).map(Recorded::estimate);
  }

  Optional<Estimate> at(Cell cell) {
    return entry.at(cell).map(Recorded::estimate);
  }

  List<Reading> all(String measurand) {
    return entry.of(measurand);
  }

  /** Coats that have any reading of a measurand, in order. */
  List<Integer> coats(String measurand) {
    return all(measurand).stream().map(r -> r.cell().coat()).distinct().sorted().toList();
  }

  static Estimate estimate(Reading reading) {
    return reading.estimate();
  }

  static Input input(String measurand, Estimate estimate, Dimension dimension) {
    return Input.of(measurand, estimate, dimension);
  }
}
