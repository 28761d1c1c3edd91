package lapline.practice.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/**
 * Something computed from the readings of a panel, such as the overlap; not a measurand, which is
 * written down. It computes, it does not judge.
 *
 * @param dimension {@link Dimension#CHOICE} for a rule that is kept (1) or broken (0)
 * @param like measurands that it is of the same kind and size as, such as a mean of theirs: it is
 *     spoken of in their units, and its target tells about what they are
 * @param from measurands that it is taken from
 * @param possible where it can lie on any panel, in SI; a target beyond it would be a slip
 * @param rule empty where too little of that was written down
 */
public record PanelQuantity(
    String id,
    Dimension dimension,
    List<String> like,
    List<String> from,
    TargetRange possible,
    Function<MeasuredPanel, Optional<Measured>> rule) {

  PanelQuantity(
      String id,
      Dimension dimension,
      double least,
      double most,
      Function<MeasuredPanel, Optional<Measured>> rule) {
    this(id, dimension, List.of(), List.of(), new TargetRange(least, most), rule);
  }

  PanelQuantity like(String... measurands) {
    return new PanelQuantity(id, dimension, List.of(measurands), from, possible, rule);
  }

  PanelQuantity from(String... measurands) {
    return new PanelQuantity(id, dimension, like, List.of(measurands), possible, rule);
  }

  public Measured measure(MeasuredPanel panel) {
    return rule.apply(panel).orElseGet(() -> new Measured.Missing(from));
  }
}
