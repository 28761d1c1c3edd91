package lapline.exams;

import java.util.List;

/**
 * What came of a paper.
 *
 * @param score share of all marks, 0 to 1
 * @param pass least share to pass
 */
public record PaperResult(double score, double pass, boolean passed, List<ItemMark> marks) {

  public PaperResult {
    marks = List.copyOf(marks);
  }

  /** How many questions got no answer that could be marked. */
  public long unanswered() {
    return marks.stream().filter(m -> m.state() != ItemMark.State.ANSWERED).count();
  }
}
