package lapline.practice.quantity;

import java.util.function.Function;
import lapline.trade.measure.Dimension;

/**
 * Something computed from the readings of a panel, such as the overlap; not a measurand, which is
 * written down. It computes, it does not judge.
 *
 * @param dimension {@link Dimension#CHOICE} for a rule that is kept (1) or broken (0)
 */
public record PanelQuantity(
    String id, Dimension dimension, Function<MeasuredPanel, Measured> rule) {

  public Measured measure(MeasuredPanel panel) {
    return rule.apply(panel);
  }
}
