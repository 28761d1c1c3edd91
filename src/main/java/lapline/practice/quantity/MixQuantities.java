package lapline.practice.quantity;

import static lapline.practice.quantity.Recorded.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelScore.Input;
import lapline.practice.PanelScore.Working;
import lapline.practice.PracticeTask.MixPart;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.mixing.MixError;
import lapline.trade.mixing.MixRatio;

/** What was poured against the ratio of the product's sheet. */
final class MixQuantities {
  private static final String AMOUNT = "mix-amount";

  private MixQuantities() {}

  /** How far the part that strays most is from its share of the mix; 0.05 is 5 % too much of it. */
  static Optional<Measured> ratio(MeasuredPanel panel) {
    List<Estimate> amounts = new ArrayList<>();
    List<Input> inputs = new ArrayList<>();
    Recorded recorded = new Recorded(panel.entry());
    for (int part = 1; part <= panel.task().mix().size(); part++) {
      String name = panel.task().mix().get(part - 1).name();
      recorded
          .at(Cell.step(AMOUNT, part))
          .ifPresent(
              a -> {
                amounts.add(a);
                inputs.add(input(name, a, Dimension.VOLUME));
              });
    }
    boolean complete = !amounts.isEmpty() && amounts.size() == panel.task().mix().size();
    if (!complete || amounts.get(0).value() <= 0) {
      return Optional.empty();
    }
    MixRatio nominal = new MixRatio(panel.task().mix().stream().map(MixPart::parts).toList());
    MixError error = MixError.of(nominal, amounts);
    Cell worst = Cell.step(AMOUNT, error.worstPart() + 1);
    return Measured.of(
        List.of(Value.of(worst, error.worst())),
        new Working("formula.mix-ratio", "source.plain", inputs));
  }
}
