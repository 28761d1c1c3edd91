package lapline.exams;

import java.util.List;
import lapline.exams.bank.ItemKind;

/**
 * How one question was marked, with the reasons.
 *
 * @param item id of the item
 * @param version the item's version when it was drawn
 * @param mark 0 to 1
 * @param given the answer in the bank's own keys, for the study of items: {@code 1,3} for ticked
 *     choices, the right places in the order they were put for steps, the SI value for a number
 * @param reasons one for each choice or step, or for the number
 * @param worked how a number comes about; empty for other kinds
 */
public record ItemMark(
    String item,
    String version,
    ItemKind kind,
    double mark,
    State state,
    String given,
    List<Reason> reasons,
    String worked) {

  public ItemMark {
    reasons = List.copyOf(reasons);
  }

  /** Whether there was anything to mark. */
  public enum State {
    ANSWERED,
    /** Nothing was written, so it got no mark. */
    UNANSWERED,
    /** Something was written, but no quantity of the kind asked for. */
    UNCLEAR
  }

  /**
   * One choice, step or number with its reason.
   *
   * @param right whether it belongs to the right answer; for a step, whether it follows the step
   *     before it
   * @param yours what you did with it: ticked, the place you gave, or the number you wrote; empty
   *     for nothing
   */
  public record Reason(String text, boolean right, String yours, String because) {}

  public boolean full() {
    return mark == 1;
  }

  public boolean none() {
    return mark == 0;
  }
}
