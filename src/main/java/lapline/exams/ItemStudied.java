package lapline.exams;

import java.util.List;
import java.util.OptionalDouble;
import lapline.exams.bank.Item;
import lapline.judgement.items.ItemSums;

/**
 * An item and what the papers say about it, as it is worded now.
 *
 * @param choices how often each choice was ticked, in the bank's order; empty for other kinds
 * @param aside whether it is set aside
 */
public record ItemStudied(Item item, ItemSums sums, List<ChoiceStudied> choices, boolean aside) {

  /** Fewer papers say nothing worth acting on: common practice, no source. */
  public static final int ENOUGH = 20;

  private static final int ENOUGH_CHOOSERS = 5;

  // usual limits of item analysis, from memory; they ask for a look and decide nothing
  private static final double TOO_EASY = 0.95;
  private static final double TOO_HARD = 0.25;
  private static final double TELLS = 0.1;

  public ItemStudied {
    choices = List.copyOf(choices);
  }

  /**
   * One choice.
   *
   * @param share of the papers on which it was ticked, 0 to 1
   * @param rest mean of the other marks of those who ticked it; nothing where nobody did
   */
  public record ChoiceStudied(Item.Choice choice, long ticked, double share, OptionalDouble rest) {}

  /** What an instructor should think of it, the gravest first. */
  public enum Worth {
    /** Those who ticked a wrong choice know more than those who ticked the right one. */
    KEY_DOUBTFUL,
    /** Those who know the rest do no better here than the others. */
    TELLS_LITTLE,
    TOO_HARD,
    TOO_EASY,
    TOO_FEW,
    GOOD
  }

  public Worth worth() {
    if (sums.papers() < ENOUGH) {
      return Worth.TOO_FEW;
    }
    if (keyDoubtful()) {
      return Worth.KEY_DOUBTFUL;
    }
    double right = sums.difficulty().orElse(0);
    if (right > TOO_EASY) {
      return Worth.TOO_EASY;
    }
    if (right < TOO_HARD) {
      return Worth.TOO_HARD;
    }
    return sums.itemRest().orElse(0) < TELLS ? Worth.TELLS_LITTLE : Worth.GOOD;
  }

  /** Whether somebody should look at it. */
  public boolean needsALook() {
    return !aside && worth() != Worth.GOOD && worth() != Worth.TOO_FEW;
  }

  private boolean keyDoubtful() {
    double right =
        choices.stream()
            .filter(c -> c.choice().right())
            .mapToDouble(c -> c.rest().orElse(Double.POSITIVE_INFINITY))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return choices.stream()
        .filter(c -> !c.choice().right() && c.ticked() >= ENOUGH_CHOOSERS)
        .anyMatch(c -> c.rest().orElse(0) > right);
  }
}
