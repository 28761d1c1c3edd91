package lapline.practice.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lapline.practice.Cell;
import lapline.practice.PanelScore.Working;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/** What came of measuring a quantity on one panel. */
public sealed interface Measured {

  /** Values with how they came about; empty where none came out. */
  static Optional<Measured> of(List<Value> values, Working working) {
    return values.isEmpty() ? Optional.empty() : Optional.of(new Values(values, working));
  }

  /** One or more values with how they came about. */
  record Values(List<Value> values, Working working) implements Measured {
    public Values {
      values = List.copyOf(values);
      if (values.isEmpty()) {
        throw new IllegalArgumentException("no values; say what is missing instead");
      }
    }
  }

  /** Not measured: the measurands that would be needed. */
  record Missing(List<String> measurands) implements Measured {
    public Missing {
      measurands = List.copyOf(measurands);
    }

    public static Missing of(String... measurands) {
      return new Missing(List.of(measurands));
    }
  }

  /**
   * Nothing to measure here: the rule asked for does not cover such a panel, so the panel is not
   * held against it.
   */
  record DoesNotApply() implements Measured {}

  /**
   * One value in SI.
   *
   * @param where on the record it belongs
   * @param conformance probability that it conforms to a range
   */
  record Value(Cell where, Estimate estimate, ToDoubleFunction<TargetRange> conformance) {
    public static Value of(Cell where, Estimate estimate) {
      return new Value(where, estimate, range -> Conformance.probability(estimate, range));
    }
  }
}
