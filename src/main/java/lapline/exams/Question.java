package lapline.exams;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;
import java.util.stream.IntStream;
import lapline.exams.bank.ItemKind;
import lapline.trade.measure.Unit;

/**
 * One item of a paper as it was drawn: wording with its numbers filled in, choices in the order
 * they are shown, and the key. It says the same for ever, whatever becomes of its bank.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "form")
@JsonSubTypes({
  @JsonSubTypes.Type(value = Question.Choosing.class, name = "choosing"),
  @JsonSubTypes.Type(value = Question.Ordering.class, name = "ordering"),
  @JsonSubTypes.Type(value = Question.Measuring.class, name = "measuring")
})
public sealed interface Question {

  Head head();

  /**
   * The places of the paper where the answer is written: the question's number, or one place for
   * each choice or step, such as {@code 3.2}. They say nothing about the key.
   *
   * @param number of the question on its paper, from 1
   */
  List<String> cells(int number);

  /**
   * What every question has.
   *
   * @param item id of the item in its bank
   * @param version the item's version when it was drawn
   */
  record Head(
      String item, String version, ItemKind kind, String topic, String text, String source) {}

  /**
   * A choice to tick.
   *
   * @param key its place in the bank, from 1, the same however it was shuffled
   */
  record Choice(int key, String text, boolean right, String because) {}

  /** One or several choices are right. */
  record Choosing(Head head, List<Choice> choices) implements Question {
    public Choosing {
      choices = List.copyOf(choices);
    }

    public boolean several() {
      return head.kind() == ItemKind.SEVERAL;
    }

    @Override
    public List<String> cells(int number) {
      return several() ? parts(number, choices.size()) : List.of("" + number);
    }
  }

  /**
   * A step to put in its place.
   *
   * @param place its right place, from 1
   */
  record Step(int place, String text, String because) {}

  /** Steps as they are shown, out of their order. */
  record Ordering(Head head, List<Step> steps) implements Question {
    public Ordering {
      steps = List.copyOf(steps);
    }

    @Override
    public List<String> cells(int number) {
      return parts(number, steps.size());
    }
  }

  /**
   * A number that people often come to instead, and why.
   *
   * @param value in SI
   */
  record Slip(double value, String because) {}

  /**
   * A number is asked for.
   *
   * @param unit the unit asked for, in which a bare number is taken
   * @param answer in SI
   * @param within how far off is still right, in SI
   * @param worked how the answer comes about
   */
  record Measuring(
      Head head, Unit unit, double answer, double within, String worked, List<Slip> slips)
      implements Question {
    public Measuring {
      slips = List.copyOf(slips);
    }

    @Override
    public List<String> cells(int number) {
      return List.of("" + number);
    }
  }

  private static List<String> parts(int number, int count) {
    return IntStream.rangeClosed(1, count).mapToObj(part -> number + "." + part).toList();
  }
}
