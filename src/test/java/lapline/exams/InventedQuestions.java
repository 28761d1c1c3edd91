package lapline.exams;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import lapline.exams.bank.ItemKind;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/** Questions made up for tests. */
final class InventedQuestions {
  private InventedQuestions() {}

  static Paper paper(double pass, Question... questions) {
    return new Paper("clear", "Clear", UnitSystem.METRIC, pass, List.of(questions));
  }

  static Question.Head head(ItemKind kind) {
    return new Question.Head("an-item", "v1", kind, "film", "What?", "invented");
  }

  /** Choices in the order shown; their keys count down, as if they had been turned round. */
  static Question.Choosing choices(ItemKind kind, boolean... right) {
    List<Question.Choice> choices =
        IntStream.range(0, right.length)
            .mapToObj(
                i ->
                    new Question.Choice(
                        right.length - i, "choice " + (i + 1), right[i], "because " + (i + 1)))
            .toList();
    return new Question.Choosing(head(kind), choices);
  }

  /** Steps in the order shown, each with its right place. */
  static Question.Ordering steps(Integer... places) {
    return new Question.Ordering(
        head(ItemKind.ORDER),
        Arrays.stream(places).map(p -> new Question.Step(p, "step " + p, "because " + p)).toList());
  }

  /** 27 µm, a micrometre either way; who divides gets 133. */
  static Question.Measuring film() {
    return new Question.Measuring(
        head(ItemKind.COMPUTED),
        Unit.MICROMETRE,
        27e-6,
        1e-6,
        "60 µm × 45 % = 27 µm",
        List.of(new Question.Slip(133e-6, "You divided.")));
  }

  static Question.Measuring hours() {
    return new Question.Measuring(
        head(ItemKind.NUMBER), Unit.HOUR, 7200, 300, "4 h ÷ 2 = 2 h", List.of());
  }
}
