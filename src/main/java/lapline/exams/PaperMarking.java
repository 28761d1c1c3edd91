package lapline.exams;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Marks a paper. Each question is worth one mark:
 *
 * <ul>
 *   <li>one right choice: 1 or 0;
 *   <li>several right choices: (right ones ticked − wrong ones ticked) ÷ right ones, never below 0,
 *       so that ticking everything earns nothing where half is right;
 *   <li>order: the share of neighbours that follow each other as they should, so that one step in a
 *       wrong place does not cost all;
 *   <li>number: 1 within its tolerance, limits included, else 0.
 * </ul>
 *
 * No answer is no mark, and is said.
 */
public final class PaperMarking {
  /** A score on the pass mark passes, whatever the last binary digit says. */
  private static final double ROUNDING = 1e-9;

  private PaperMarking() {}

  /**
   * @param typed by place, as it was written on the paper
   */
  public static PaperResult mark(Paper paper, Map<String, String> typed) {
    AnswerReader answers = new AnswerReader(paper, typed);
    List<ItemMark> marks =
        IntStream.rangeClosed(1, paper.questions().size())
            .mapToObj(n -> QuestionMarking.mark(paper.questions().get(n - 1), answers.answer(n)))
            .toList();
    return result(marks, marks, paper.pass());
  }

  /**
   * The same marks with some questions not counting; they stay in the result to be read. A paper of
   * which nothing would be left counts as it is.
   */
  public static PaperResult without(PaperResult result, Set<String> items) {
    List<ItemMark> counting =
        result.marks().stream().filter(m -> !items.contains(m.item())).toList();
    return counting.isEmpty() ? result : result(counting, result.marks(), result.pass());
  }

  private static PaperResult result(List<ItemMark> counting, List<ItemMark> all, double pass) {
    double score = counting.stream().mapToDouble(ItemMark::mark).average().orElse(0);
    return new PaperResult(score, pass, score + ROUNDING >= pass, all);
  }
}
