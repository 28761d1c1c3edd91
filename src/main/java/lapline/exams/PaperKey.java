package lapline.exams;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lapline.content.units.Quantity;

/** What a person who knows everything would write on a paper. */
public final class PaperKey {
  private static final String TICK = "x";

  private PaperKey() {}

  /** The right answers by place, as they would be typed. */
  public static Map<String, String> rightAnswers(Paper paper) {
    Map<String, String> typed = new HashMap<>();
    for (int number = 1; number <= paper.questions().size(); number++) {
      write(paper.questions().get(number - 1), number, typed);
    }
    return typed;
  }

  private static void write(Question question, int number, Map<String, String> typed) {
    List<String> cells = question.cells(number);
    if (question instanceof Question.Choosing choosing) {
      choices(choosing, cells, typed);
    } else if (question instanceof Question.Ordering ordering) {
      for (int i = 0; i < cells.size(); i++) {
        typed.put(cells.get(i), "" + ordering.steps().get(i).place());
      }
    } else if (question instanceof Question.Measuring m) {
      typed.put(cells.get(0), new Quantity(m.answer(), m.unit()).written());
    }
  }

  private static void choices(
      Question.Choosing question, List<String> cells, Map<String, String> typed) {
    for (int i = 0; i < question.choices().size(); i++) {
      if (question.choices().get(i).right()) {
        typed.put(cells.get(question.several() ? i : 0), question.several() ? TICK : "" + (i + 1));
      }
    }
  }
}
