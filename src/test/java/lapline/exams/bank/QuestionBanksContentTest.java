package lapline.exams.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import lapline.content.ContentFiles;
import lapline.content.WrittenProblems;
import lapline.content.units.PerSystem;
import lapline.content.units.Quantity;
import lapline.exams.Paper;
import lapline.exams.PaperDraw;
import lapline.exams.Question;
import lapline.exams.bank.Item.ComputedItem;
import lapline.exams.bank.Item.NumberItem;
import lapline.exams.bank.Item.NumberSlip;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The banks as they are written: every file parses, and each item is what we ask of an item. */
class QuestionBanksContentTest {
  private static final int ITEMS = 12;
  private static final int DRAWS = 300;
  private static final double CLEARLY_OTHER = 1.5;

  /** The shop arithmetic once more, written out without any of our own code. */
  private static final Map<String, ToDoubleFunction<Map<String, Double>>> BY_HAND =
      Map.of(
          "paths-over-panel",
          v -> Math.round((v.get("field") - v.get("disc")) / (v.get("disc") * 0.5)) + 1,
          "film-sanded-off",
          v -> v.get("before") - v.get("after"),
          "bleed-share",
          v -> v.get("bleed") / v.get("border"),
          "film-to-cut",
          v -> v.get("beyond") + v.get("opening") + v.get("beyond"),
          "step-from-fan",
          v -> v.get("fan") - v.get("fan") * v.get("overlap"),
          "room-left",
          v -> v.get("room") - (v.get("second") + v.get("third")),
          "dry-from-wet",
          v -> v.get("wet") * v.get("solids") + v.get("wet") * v.get("solids"),
          "above-the-dew-point",
          v -> v.get("panel") - v.get("dew"),
          "stroke-speed",
          v -> v.get("length") / (v.get("time") / 5));

  private static final ContentFiles FILES = ContentFiles.fromClasspath();

  private final QuestionBanks banks = new BankReader(FILES).read();
  private final WrittenProblems problems = new WrittenProblems(FILES, banks.problems());

  private void add(Bank bank, Item item, String whatIsWrong, String whatToWrite) {
    String near = item == null ? "" : "id: " + item.id();
    problems.add("question-banks/" + bank.unit() + ".yaml", near, whatIsWrong, whatToWrite);
  }

  @Test
  void every_bank_parses_and_each_unit_has_one() {
    problems.none();
    assertThat(banks.banks())
        .extracting(Bank::unit)
        .contains("preparing", "masking", "coverage", "clear");
  }

  @Test
  void every_bank_has_enough_items_of_each_kind() {
    Map<ItemKind, Integer> least =
        Map.of(
            ItemKind.SINGLE, 5,
            ItemKind.SEVERAL, 2,
            ItemKind.ORDER, 1,
            ItemKind.NUMBER, 1,
            ItemKind.COMPUTED, 1);
    for (Bank bank : banks.banks()) {
      if (bank.items().size() < ITEMS) {
        add(bank, null, "it has " + bank.items().size() + " items", "write at least " + ITEMS);
      }
      least.forEach(
          (kind, count) -> {
            if (bank.of(kind).size() < count) {
              add(bank, null, "too few of kind " + kind.word(), "write at least " + count);
            }
          });
    }
    problems.none();
  }

  @Test
  void every_topic_has_two_items_or_the_one_would_be_on_every_paper() {
    for (Bank bank : banks.banks()) {
      for (String topic : bank.topics()) {
        if (bank.items().stream().filter(i -> i.topic().equals(topic)).count() < 2) {
          add(bank, null, "the topic '" + topic + "' has one item", "add another");
        }
      }
      assertThat(bank.topics()).as(bank.unit()).contains("safety");
    }
    problems.none();
  }

  @Test
  void every_paper_can_be_filled_in_both_systems_again_and_again() {
    for (Bank bank : banks.banks()) {
      for (UnitSystem units : UnitSystem.values()) {
        Paper paper = null;
        for (int seed = 0; seed < DRAWS; seed++) {
          PaperDraw draw = new PaperDraw(new SplittableRandom(seed));
          paper = draw.draw(bank, units, paper == null ? java.util.Set.of() : paper.items());
          assertThat(paper.questions()).hasSize(bank.blueprint().size());
          assertThat(paper.toString()).as(bank.unit() + " seed " + seed).doesNotContain("{", "|");
        }
      }
    }
  }

  @Test
  void every_computed_answer_agrees_with_the_formula_written_out_by_hand() {
    for (Bank bank : banks.banks()) {
      for (Item item : bank.of(ItemKind.COMPUTED)) {
        ComputedItem computed = (ComputedItem) item;
        assertThat(BY_HAND).as("formula by hand").containsKey(item.id());
        for (UnitSystem units : UnitSystem.values()) {
          for (Map<String, Quantity> values : allValues(computed, units)) {
            double answer = of(computed.calculation(), values);
            assertThat(answer)
                .as(item.id() + " " + values)
                .isPositive()
                .isCloseTo(
                    BY_HAND.get(item.id()).applyAsDouble(si(values)),
                    org.assertj.core.data.Percentage.withPercentage(1e-6));
          }
        }
      }
    }
  }

  @Test
  void no_slip_lies_so_near_the_answer_that_it_would_be_right_or_doubtful() {
    for (Bank bank : banks.banks()) {
      bank.of(ItemKind.COMPUTED).forEach(i -> slipsApart(bank, (ComputedItem) i));
      bank.of(ItemKind.NUMBER).forEach(i -> slipsApart(bank, (NumberItem) i));
    }
    problems.none();
  }

  private void slipsApart(Bank bank, ComputedItem item) {
    for (UnitSystem units : UnitSystem.values()) {
      for (Map<String, Quantity> values : allValues(item, units)) {
        Quantity answer =
            Quantity.in(units, of(item.calculation(), values), item.calculation().result());
        for (Item.ComputedSlip slip : item.slips()) {
          double figures =
              slip.given() != null
                  ? values.get(slip.given()).figures()
                  : Quantity.in(units, of(slip.calculation(), values), slip.calculation().result())
                      .figures();
          apart(bank, item, answer.unit().toSi(figures), answer, item.within());
        }
      }
    }
  }

  private void slipsApart(Bank bank, NumberItem item) {
    for (UnitSystem units : UnitSystem.values()) {
      for (NumberSlip slip : item.slips()) {
        apart(bank, item, slip.answer().in(units).si(), item.answer().in(units), item.within());
      }
    }
  }

  private void apart(Bank bank, Item item, double slip, Quantity answer, Tolerance within) {
    if (Math.abs(slip - answer.si()) <= CLEARLY_OTHER * within.around(answer)) {
      add(bank, item, "the slip " + slip + " is near " + answer.written(), "choose other values");
    }
  }

  @Test
  void the_answer_as_it_is_shown_is_marked_right() {
    for (Bank bank : banks.banks()) {
      for (int seed = 0; seed < DRAWS; seed++) {
        for (UnitSystem units : UnitSystem.values()) {
          Paper paper =
              new PaperDraw(new SplittableRandom(seed)).draw(bank, units, java.util.Set.of());
          for (Question q : paper.questions()) {
            if (q instanceof Question.Measuring m) {
              shownIsRight(m);
            }
          }
        }
      }
    }
  }

  private static void shownIsRight(Question.Measuring m) {
    String shown = new Quantity(m.answer(), m.unit()).written();
    Paper one = new Paper("u", "t", UnitSystem.METRIC, 1, List.of(m));
    assertThat(lapline.exams.PaperMarking.mark(one, Map.of("1", shown)).passed())
        .as(m.head().item() + " " + shown)
        .isTrue();
    assertThat(m.worked()).contains(shown.replace('\u00a0', ' ').split(" ")[0]);
  }

  private static double of(Calculation calculation, Map<String, Quantity> values) {
    return calculation.of(si(values));
  }

  private static Map<String, Double> si(Map<String, Quantity> values) {
    Map<String, Double> si = new HashMap<>();
    values.forEach((name, q) -> si.put(name, q.si()));
    return si;
  }

  /** Every combination of values that the item can be drawn with. */
  private static List<Map<String, Quantity>> allValues(ComputedItem item, UnitSystem units) {
    List<Map<String, Quantity>> all = List.of(Map.of());
    for (Map.Entry<String, PerSystem<ValueRange>> entry : item.values().entrySet()) {
      List<Map<String, Quantity>> longer = new ArrayList<>();
      for (Map<String, Quantity> before : all) {
        for (Quantity q : entry.getValue().in(units).all()) {
          Map<String, Quantity> with = new HashMap<>(before);
          with.put(entry.getKey(), q);
          longer.add(with);
        }
      }
      all = longer;
    }
    return all;
  }
}
