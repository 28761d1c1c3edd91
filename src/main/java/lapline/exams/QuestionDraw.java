package lapline.exams;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import lapline.content.units.Quantity;
import lapline.exams.bank.BankText;
import lapline.exams.bank.Calculation;
import lapline.exams.bank.Item;
import lapline.exams.bank.Item.ChoiceItem;
import lapline.exams.bank.Item.ComputedItem;
import lapline.exams.bank.Item.ComputedSlip;
import lapline.exams.bank.Item.NumberItem;
import lapline.exams.bank.Item.OrderItem;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/** Makes one question of an item: choices and steps shuffled, values drawn, wording filled in. */
final class QuestionDraw {
  private static final String ANSWER = "answer";

  private final RandomGenerator chance;

  QuestionDraw(RandomGenerator chance) {
    this.chance = chance;
  }

  Question draw(Item item, UnitSystem units) {
    if (item instanceof ChoiceItem choice) {
      return choices(choice, units);
    }
    if (item instanceof OrderItem order) {
      return steps(order, units);
    }
    return item instanceof NumberItem number
        ? number(number, units)
        : computed((ComputedItem) item, units);
  }

  private static Question.Head head(Item item, UnitSystem units, Map<String, String> values) {
    String text = BankText.fill(item.head().question(), units, values);
    return new Question.Head(
        item.id(), item.version(), item.kind(), item.topic(), text, item.head().source());
  }

  private static String plain(String text, UnitSystem units) {
    return BankText.fill(text, units, Map.of());
  }

  private Question choices(ChoiceItem item, UnitSystem units) {
    List<Question.Choice> choices = new ArrayList<>();
    for (Item.Choice c : item.choices()) {
      choices.add(
          new Question.Choice(
              choices.size() + 1, plain(c.text(), units), c.right(), plain(c.because(), units)));
    }
    Shuffle.shuffle(choices, chance);
    return new Question.Choosing(head(item, units, Map.of()), choices);
  }

  private Question steps(OrderItem item, UnitSystem units) {
    List<Question.Step> right = new ArrayList<>();
    for (Item.Step s : item.steps()) {
      right.add(
          new Question.Step(right.size() + 1, plain(s.text(), units), plain(s.because(), units)));
    }
    List<Question.Step> shown = new ArrayList<>(right);
    while (shown.equals(right)) {
      Shuffle.shuffle(shown, chance);
    }
    return new Question.Ordering(head(item, units, Map.of()), shown);
  }

  private static Question number(NumberItem item, UnitSystem units) {
    Quantity answer = item.answer().in(units);
    return new Question.Measuring(
        head(item, units, Map.of()),
        answer.unit(),
        answer.si(),
        item.within().around(answer),
        BankText.fill(item.worked(), units, Map.of(ANSWER, answer.written())),
        item.slips().stream()
            .map(s -> new Question.Slip(s.answer().in(units).si(), plain(s.because(), units)))
            .toList());
  }

  private Question computed(ComputedItem item, UnitSystem units) {
    Map<String, Quantity> drawn = new LinkedHashMap<>();
    item.values().forEach((name, range) -> drawn.put(name, range.in(units).draw(chance)));
    Quantity answer = result(item.calculation(), drawn, units);
    Map<String, String> words = new HashMap<>();
    drawn.forEach((name, q) -> words.put(name, q.written()));
    item.shown().forEach((name, c) -> words.put(name, result(c, drawn, units).written()));
    words.put(ANSWER, answer.written());
    return new Question.Measuring(
        head(item, units, words),
        answer.unit(),
        answer.si(),
        item.within().around(answer),
        BankText.fill(item.worked(), units, words),
        slips(item, drawn, answer.dimension(), units));
  }

  private static Quantity result(
      Calculation calculation, Map<String, Quantity> drawn, UnitSystem units) {
    Map<String, Double> si = new HashMap<>();
    drawn.forEach((name, q) -> si.put(name, q.si()));
    return Quantity.in(units, calculation.of(si), calculation.result());
  }

  private static List<Question.Slip> slips(
      ComputedItem item, Map<String, Quantity> drawn, Dimension asked, UnitSystem units) {
    Unit unit = Unit.preferred(asked, units);
    return item.slips().stream()
        .map(
            s ->
                new Question.Slip(
                    // a slip is told by its figures: 10 °C typed as a difference is 10 °C there
                    unit.toSi(slip(s, drawn, units).figures()), plain(s.because(), units)))
        .toList();
  }

  private static Quantity slip(ComputedSlip slip, Map<String, Quantity> drawn, UnitSystem units) {
    return slip.calculation() == null
        ? drawn.get(slip.given())
        : result(slip.calculation(), drawn, units);
  }
}
