package lapline.practice;

import java.util.List;
import java.util.Optional;
import lapline.practice.Criterion.Judged;
import lapline.practice.quantity.PanelQuantities;
import lapline.practice.quantity.PanelQuantity;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;

/**
 * Where a target can lie at all: beyond what can be written down or computed, no panel would ever
 * meet it, or every panel would.
 */
final class PossibleTarget {
  private static final int LONGEST = 50;

  private PossibleTarget() {}

  /** In the SI unit of the criterion. */
  static TargetRange of(Criterion criterion, Measurands measurands) {
    if (criterion.judged() == Judged.SHARE) {
      return new TargetRange(0, 1);
    }
    return PanelQuantities.find(criterion.quantity())
        .map(PanelQuantity::possible)
        .or(() -> measurands.find(criterion.quantity()).map(m -> readings(m, criterion.judged())))
        .orElse(new TargetRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
  }

  /** A sum of readings has no most: it grows with every one. */
  private static TargetRange readings(Measurand m, Judged judged) {
    double most = judged == Judged.SUM ? Double.POSITIVE_INFINITY : m.possibleMost();
    return new TargetRange(m.possibleLeast(), most);
  }

  /** Why a text is no target, or which of its limits cannot be; empty where all is well. */
  static Optional<FieldProblem> problem(
      String field, String text, TargetRange possible, SpokenUnits kind, UnitSystem units) {
    if (text.strip().length() > LONGEST) {
      return Optional.of(new FieldProblem(field, "targets.wrong.long", List.of("" + LONGEST)));
    }
    ReadTarget read = TargetText.understand(text, kind, units);
    return read instanceof ReadTarget.NotUnderstood n
        ? Optional.of(new FieldProblem(field, n.key(), n.args()))
        : read.asRange().flatMap(r -> beyond(field, text, r, possible, kind, units));
  }

  private static Optional<FieldProblem> beyond(
      String field,
      String text,
      TargetRange wanted,
      TargetRange possible,
      SpokenUnits kind,
      UnitSystem units) {
    double low = wanted.hasLeast() ? wanted.least() : wanted.most();
    double high = wanted.hasMost() ? wanted.most() : wanted.least();
    if (low < possible.least()) {
      return Optional.of(
          new FieldProblem(
              field, "targets.wrong.below", limits(text, low, possible.least(), kind, units)));
    }
    return high > possible.most()
        ? Optional.of(
            new FieldProblem(
                field, "targets.wrong.above", limits(text, high, possible.most(), kind, units)))
        : Optional.empty();
  }

  private static List<String> limits(
      String text, double typed, double possible, SpokenUnits kind, UnitSystem units) {
    return List.of(
        QuantityWriter.write(typed, kind, units),
        QuantityWriter.write(possible, kind, units),
        text.strip());
  }
}
