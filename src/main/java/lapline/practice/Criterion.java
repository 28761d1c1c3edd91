package lapline.practice;

import java.util.List;
import lapline.practice.PanelScore.Working;
import lapline.practice.quantity.Measured;
import lapline.practice.quantity.MeasuredPanel;
import lapline.practice.quantity.PanelQuantities;
import lapline.practice.quantity.PanelQuantity;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;

/**
 * One target on one quantity of a panel.
 *
 * @param quantity id of a measurand, or of a computed quantity such as {@code overlap}
 * @param spoken the units it is spoken of in; of a criterion kept before there were any, the usual
 *     ones of its dimension
 * @param judged how several values are taken together
 * @param target in the SI unit of {@code dimension}
 * @param critical whether the panel cannot be accepted for sign-off without it
 * @param weight share in the practice score, relative to the other criteria; 0 for a critical one
 *     that only decides on acceptance
 * @param fade how far outside the target the practice points have fallen to e^−½, in SI; > 0
 * @param card name of the gun-card or data-sheet value that overrides the target; empty for none
 * @param source where the target comes from, in words
 */
public record Criterion(
    String id,
    String label,
    String quantity,
    Dimension dimension,
    SpokenUnits spoken,
    Judged judged,
    TargetRange target,
    boolean critical,
    double weight,
    double fade,
    String card,
    String why,
    String source) {

  public Criterion {
    spoken = spoken == null ? SpokenUnits.usual(dimension) : spoken;
  }

  /** How several values of a quantity become one verdict. */
  public enum Judged {
    /** Their mean. */
    MEAN,
    /** Each by itself; the least sure one decides. */
    EACH,
    /** Their sum. */
    SUM,
    /** The share of them, by count, whose value is not 0. */
    SHARE,
    /** The largest step from one to the next, such as between sanding grits. */
    LARGEST_STEP,
    /** The last one. */
    LAST
  }

  /** The values it is judged on: a computed quantity, or the readings of a measurand. */
  Measured measure(MeasuredPanel panel) {
    return PanelQuantities.find(quantity)
        .map(q -> q.measure(panel))
        .orElseGet(() -> readings(panel.entry()));
  }

  /** Measurands that these values are taken from. */
  List<String> sources() {
    return PanelQuantities.find(quantity).map(PanelQuantity::from).orElse(List.of(quantity));
  }

  private Measured readings(PanelEntry entry) {
    List<Measured.Value> values =
        entry.of(quantity).stream()
            .map(r -> Measured.Value.of(r.cell(), Estimate.of(r.value(), r.standardUncertainty())))
            .toList();
    return values.isEmpty()
        ? Measured.Missing.of(quantity)
        : new Measured.Values(values, new Working("formula.as-read", "source.plain", List.of()));
  }

  /** Whether its target is a range that a data sheet can give; not a choice or a rule to keep. */
  public boolean hasRange(Measurands measurands) {
    return judged == Judged.SHARE
        || PanelQuantities.find(quantity)
            .map(q -> q.dimension() != Dimension.CHOICE)
            .or(() -> measurands.find(quantity).map(m -> m.options().isEmpty()))
            .orElse(false);
  }

  public Criterion withTarget(TargetRange other, String otherSource) {
    return new Criterion(
        id,
        label,
        quantity,
        dimension,
        spoken,
        judged,
        other,
        critical,
        weight,
        fade,
        card,
        why,
        otherSource);
  }
}
