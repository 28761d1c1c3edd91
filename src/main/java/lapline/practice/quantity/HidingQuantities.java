package lapline.practice.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Input;
import lapline.practice.PanelScore.Working;
import lapline.practice.Reading;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.hiding.CoatsToHiding;
import lapline.trade.hiding.ContrastByCoat;
import lapline.trade.hiding.ContrastRatio;
import lapline.trade.hiding.SquaresSeen;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/** How many coats a checker card needs, from a meter's readings or from squares still seen. */
final class HidingQuantities {
  private static final Cell CARD = Cell.panel("coats-to-hiding");

  private HidingQuantities() {}

  /** Coats to hiding: from reflectance over black and white where given, else by eye. */
  static Optional<Measured> coats(MeasuredPanel panel) {
    List<Estimate> contrasts = contrasts(panel.entry());
    if (!contrasts.isEmpty()) {
      return value(
          ContrastByCoat.coatsToHiding(contrasts),
          "formula.coats-contrast",
          "source.iso-6504",
          inputs(contrasts));
    }
    List<Integer> squares = squares(panel.entry());
    return squares.isEmpty()
        ? Optional.empty()
        : value(
            SquaresSeen.coatsToHiding(squares), "formula.coats-squares", "source.plain", List.of());
  }

  private static Optional<Measured> value(
      CoatsToHiding coats, String formula, String source, List<Input> inputs) {
    Value value =
        new Value(CARD, estimate(coats), range -> coats.probabilityWithin(range).orElse(0.5));
    return Measured.of(List.of(value), new Working(formula, source, inputs));
  }

  /** A card that still shows has no value yet, but its number of coats is known to be exceeded. */
  private static Estimate estimate(CoatsToHiding coats) {
    if (coats instanceof CoatsToHiding.Vanished v) {
      return Estimate.of(v.coats(), 0);
    }
    if (coats instanceof CoatsToHiding.Crossed c) {
      return c.film();
    }
    int seen =
        coats instanceof CoatsToHiding.NotReached n
            ? n.coats()
            : ((CoatsToHiding.StillShowing) coats).coats();
    return Estimate.of(seen + 1.0, 0);
  }

  /** Contrast ratio after coat 1, 2, … as long as both readings of each coat are there. */
  private static List<Estimate> contrasts(PanelEntry entry) {
    List<Estimate> found = new ArrayList<>();
    Recorded recorded = new Recorded(entry);
    for (int coat = 1; ; coat++) {
      Optional<Estimate> black = recorded.at(Cell.coat("luminance-black", coat));
      Optional<Estimate> white =
          recorded.at(Cell.coat("luminance-white", coat)).filter(w -> w.value() > 0);
      if (black.isEmpty() || white.isEmpty()) {
        return found;
      }
      found.add(ContrastRatio.of(black.get(), white.get()));
    }
  }

  private static List<Input> inputs(List<Estimate> contrasts) {
    List<Input> inputs = new ArrayList<>();
    for (int i = 0; i < contrasts.size(); i++) {
      inputs.add(Recorded.input("contrast", contrasts.get(i), Dimension.SHARE));
    }
    return inputs;
  }

  private static List<Integer> squares(PanelEntry entry) {
    List<Integer> seen = new ArrayList<>();
    for (int coat = 1; ; coat++) {
      Optional<Reading> squares = entry.at(Cell.coat("squares-seen", coat));
      if (squares.isEmpty()) {
        return seen;
      }
      seen.add((int) Math.round(squares.get().value()));
    }
  }
}
