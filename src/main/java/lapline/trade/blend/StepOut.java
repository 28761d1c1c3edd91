package lapline.trade.blend;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * How far each coat of a blend reaches past the edge of the primer, and so whether each coat steps
 * out beyond the one before.
 *
 * @param reaches from the primer's edge to the edge of coat 1, 2, …, metres, 0 or more; at least
 *     one
 */
public record StepOut(List<Estimate> reaches) {

  public StepOut {
    if (reaches.isEmpty()) {
      throw new MeasureException("coats", 0, "1 or more");
    }
    reaches.forEach(r -> Valid.notNegative("reach", r.value()));
    reaches = List.copyOf(reaches);
  }

  /**
   * How far each coat goes past the one before, metres, the first past the primer itself; negative
   * where it falls short of it. Readings independent.
   */
  public List<Estimate> steps() {
    List<Estimate> steps = new ArrayList<>();
    steps.add(reaches.get(0));
    for (int coat = 1; coat < reaches.size(); coat++) {
      steps.add(Gum.difference(reaches.get(coat), reaches.get(coat - 1)));
    }
    return steps;
  }

  /**
   * Probability for each coat after the first that it truly reaches beyond the one before.
   *
   * @return one fewer than there are coats
   */
  public List<Double> beyondTheOneBefore() {
    TargetRange further = TargetRange.atLeast(Double.MIN_VALUE);
    return steps().stream().skip(1).map(s -> Conformance.probability(s, further)).toList();
  }

  /** The coat that reaches furthest, counted from 1. */
  public int furthestCoat() {
    int furthest = 0;
    for (int coat = 1; coat < reaches.size(); coat++) {
      furthest = reaches.get(coat).value() > reaches.get(furthest).value() ? coat : furthest;
    }
    return furthest + 1;
  }

  /** Reach of the coat that goes furthest, metres. */
  public Estimate furthest() {
    return reaches.get(furthestCoat() - 1);
  }
}
