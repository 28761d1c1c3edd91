package lapline.exams;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lapline.content.units.Quantity;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.ReadQuantity.NotUnderstood;
import lapline.trade.measure.ReadQuantity.Understood;
import lapline.trade.measure.UnitSystem;

/** Reads the answers of a paper from what was typed into its places. */
public final class AnswerReader {
  private static final Pattern BARE_NUMBER = Pattern.compile("[-+\\d.,\\s/½¼¾eE\\u00a0]+");

  private final Paper paper;
  private final Map<String, String> typed;

  /**
   * @param typed by place; empty text is the same as none
   */
  public AnswerReader(Paper paper, Map<String, String> typed) {
    this.paper = paper;
    this.typed = typed;
  }

  /**
   * @param number of the question, from 1
   */
  public Answer answer(int number) {
    Question question = paper.questions().get(number - 1);
    if (question instanceof Question.Choosing choosing) {
      return chosen(choosing, number);
    }
    return question instanceof Question.Ordering ordering
        ? placed(ordering, number)
        : measured((Question.Measuring) question, text("" + number));
  }

  /** How many questions have an answer without a flaw. */
  public int answered() {
    return (int)
        IntStream.rangeClosed(1, paper.questions().size())
            .mapToObj(this::answer)
            .filter(a -> !(a instanceof Answer.None) && a.flaw().isEmpty())
            .count();
  }

  private String text(String cell) {
    return typed.getOrDefault(cell, "").strip();
  }

  private Answer chosen(Question.Choosing question, int number) {
    Set<Integer> positions = new HashSet<>();
    if (question.several()) {
      List<String> cells = question.cells(number);
      for (int i = 0; i < cells.size(); i++) {
        if (!text(cells.get(i)).isEmpty()) {
          positions.add(i + 1);
        }
      }
    } else {
      among(text("" + number), question.choices().size()).ifPresent(positions::add);
    }
    return positions.isEmpty() ? new Answer.None() : new Answer.Chosen(positions);
  }

  private Answer placed(Question.Ordering question, int number) {
    int steps = question.steps().size();
    Map<Integer, Integer> places = new HashMap<>();
    List<String> cells = question.cells(number);
    for (int i = 0; i < steps; i++) {
      int position = i + 1;
      among(text(cells.get(i)), steps).ifPresent(place -> places.put(position, place));
    }
    return places.isEmpty() ? new Answer.None() : new Answer.Placed(places, steps);
  }

  /** The number from 1 to {@code most} that a text is; empty when it is none. */
  private static Optional<Integer> among(String text, int most) {
    return text.matches("\\d{1,3}")
        ? Optional.of(Integer.valueOf(text)).filter(n -> n >= 1 && n <= most)
        : Optional.empty();
  }

  private Answer measured(Question.Measuring question, String text) {
    if (text.isEmpty()) {
      return new Answer.None();
    }
    boolean bare = BARE_NUMBER.matcher(text).matches();
    String withUnit = bare ? text + " " + question.unit().symbol() : text;
    ReadQuantity read =
        QuantityReader.read(withUnit.strip(), question.unit().dimension(), UnitSystem.METRIC);
    return read instanceof Understood u
        ? new Answer.Measured(u.si(), new Quantity(u.si(), question.unit()).written())
        : new Answer.Unclear(text, flaw((NotUnderstood) read, question));
  }

  private static Answer.Flaw flaw(NotUnderstood read, Question.Measuring question) {
    return new Answer.Flaw(
        "exams.flaw." + read.reason(),
        List.of(read.args().isEmpty() ? "" : read.args().get(0), question.unit().symbol()));
  }
}
