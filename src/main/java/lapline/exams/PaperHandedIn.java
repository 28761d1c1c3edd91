package lapline.exams;

import java.util.Set;
import lapline.exams.MarkedAnew.Mark;

/**
 * A paper as it was marked when it was handed in, and which of its questions do not count now.
 *
 * @param result of the day it was handed in
 * @param without ids of the items that do not count now
 */
public record PaperHandedIn(Sitting sitting, PaperResult result, Set<String> without) {

  public PaperHandedIn {
    without = Set.copyOf(without);
  }

  /** What it is worth without these items. */
  Mark markedWithout(Set<String> items) {
    PaperResult marked = PaperMarking.without(result, items);
    return new Mark(marked.score(), marked.passed(), items);
  }
}
