package lapline.practice.quantity;

import java.util.function.BiFunction;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Dimension;

/**
 * Something computed from the readings of a panel, such as the overlap; not a measurand, which is
 * written down. It computes, it does not judge.
 */
public record PanelQuantity(
    String id, Dimension dimension, BiFunction<PracticeTask, PanelEntry, Measured> rule) {

  public Measured measure(PracticeTask task, PanelEntry entry) {
    return rule.apply(task, entry);
  }
}
