package lapline.exams.pages;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lapline.exams.Answer;
import lapline.exams.Question;

/**
 * One question on the page with what is understood of its answer.
 *
 * @param number on its paper, from 1
 */
public record PaperQuestion(int number, Question question, Answer answer) {

  /**
   * A place to tick or to give a number to.
   *
   * @param position as it is shown, from 1
   */
  public record Place(String cell, int position, String text) {}

  public boolean isSingle() {
    return question instanceof Question.Choosing c && !c.several();
  }

  public boolean isSeveral() {
    return question instanceof Question.Choosing c && c.several();
  }

  public boolean isOrder() {
    return question instanceof Question.Ordering;
  }

  public boolean isMeasured() {
    return question instanceof Question.Measuring;
  }

  /** The only place of the question, or the first of several. */
  public String getCell() {
    return question.cells(number).get(0);
  }

  public String getUnit() {
    return question instanceof Question.Measuring m ? m.unit().symbol() : "";
  }

  /** The choices or steps in the order they are shown. */
  public List<Place> getPlaces() {
    List<String> texts = texts();
    List<String> cells = question.cells(number);
    return IntStream.range(0, texts.size())
        .mapToObj(
            i -> new Place(cells.size() > 1 ? cells.get(i) : cells.get(0), i + 1, texts.get(i)))
        .toList();
  }

  private List<String> texts() {
    if (question instanceof Question.Choosing c) {
      return c.choices().stream().map(Question.Choice::text).toList();
    }
    return question instanceof Question.Ordering o
        ? o.steps().stream().map(Question.Step::text).toList()
        : List.of();
  }

  public boolean isUnanswered() {
    return answer instanceof Answer.None;
  }

  /** Why the answer is not all there yet; null when it is, or when there is none. */
  public Answer.Flaw getFlaw() {
    return answer.flaw().orElse(null);
  }

  /** The number as it was understood; empty for none. */
  public String getUnderstood() {
    return answer instanceof Answer.Measured m ? m.written() : "";
  }

  /**
   * What was answered, in words, to be looked over: ticked choices, or steps in their new order.
   */
  public List<String> getInWords() {
    if (answer instanceof Answer.Chosen chosen) {
      return chosen.positions().stream().map(p -> texts().get(p - 1)).toList();
    }
    if (answer instanceof Answer.Placed placed) {
      return placed.places().entrySet().stream()
          .sorted(Map.Entry.comparingByValue())
          .map(e -> e.getValue() + ". " + texts().get(e.getKey() - 1))
          .toList();
    }
    return answer instanceof Answer.Unclear unclear
        ? List.of(unclear.typed())
        : isUnanswered() ? List.of() : List.of(getUnderstood());
  }
}
