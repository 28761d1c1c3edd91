package lapline.practice.quantity;

import java.util.function.Function;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/**
 * Something computed from the readings of a panel, such as the overlap; not a measurand, which is
 * written down. It computes, it does not judge.
 *
 * @param dimension {@link Dimension#CHOICE} for a rule that is kept (1) or broken (0)
 * @param possible where it can lie on any panel, in SI; a target beyond it would be a slip
 */
public record PanelQuantity(
    String id, Dimension dimension, TargetRange possible, Function<MeasuredPanel, Measured> rule) {

  PanelQuantity(
      String id,
      Dimension dimension,
      double least,
      double most,
      Function<MeasuredPanel, Measured> rule) {
    this(id, dimension, new TargetRange(least, most), rule);
  }

  public Measured measure(MeasuredPanel panel) {
    return rule.apply(panel);
  }
}
