package lapline.exams.bank;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.content.ContentFiles;
import lapline.content.WrittenProblems;
import lapline.exams.bank.Item.Choice;
import lapline.exams.bank.Item.ChoiceItem;
import lapline.exams.bank.Item.OrderItem;
import org.junit.jupiter.api.Test;

/**
 * Nobody passes by a habit of guessing: no item of the banks is given away by its length, its
 * wording or the number of its right choices. Places cannot give it away, since papers shuffle.
 */
class GiveAwayContentTest {
  /** Of five single items chance alone gives about one; more than two are a habit of ours. */
  private static final double MOST_BY_LENGTH = 0.4;

  /**
   * Right choices of an item with several may be longer than its wrong ones by this, on average.
   */
  private static final double LONGER = 1.3;

  private static final ContentFiles FILES = ContentFiles.fromClasspath();

  private final QuestionBanks banks = new BankReader(FILES).read();
  private final WrittenProblems problems = new WrittenProblems(FILES, banks.problems());

  private void add(Bank bank, Item item, String whatIsWrong, String whatToWrite) {
    String near = item == null ? "" : "id: " + item.id();
    problems.add("question-banks/" + bank.unit() + ".yaml", near, whatIsWrong, whatToWrite);
  }

  private static List<ChoiceItem> of(Bank bank, ItemKind kind) {
    return bank.of(kind).stream().map(ChoiceItem.class::cast).toList();
  }

  @Test
  void the_right_choice_is_not_given_away_by_its_length() {
    for (Bank bank : banks.banks()) {
      guessed(bank, "longest", item -> isExtreme(item, 1));
      guessed(bank, "shortest", item -> isExtreme(item, -1));
    }
    problems.none();
  }

  private void guessed(Bank bank, String which, Predicate<ChoiceItem> hits) {
    List<ChoiceItem> single = of(bank, ItemKind.SINGLE);
    List<String> hit = single.stream().filter(hits).map(Item::id).toList();
    if (hit.size() > MOST_BY_LENGTH * single.size()) {
      add(bank, null, "the " + which + " choice is the right one in " + hit, "even them out");
    }
  }

  /** Whether the right choice is longer (1) or shorter (-1) than every wrong one. */
  private static boolean isExtreme(ChoiceItem item, int sign) {
    int right =
        item.choices().stream().filter(Choice::right).findFirst().orElseThrow().text().length();
    return item.choices().stream()
        .filter(c -> !c.right())
        .allMatch(c -> sign * c.text().length() < sign * right);
  }

  @Test
  void where_several_are_right_they_are_not_the_long_ones_and_not_always_as_many() {
    for (Bank bank : banks.banks()) {
      List<ChoiceItem> several = of(bank, ItemKind.SEVERAL);
      for (ChoiceItem item : several) {
        if (length(item, true) > LONGER * length(item, false)) {
          add(bank, item, "its right choices are the long ones", "even them out");
        }
        if (!item.head().question().matches(".*Choose all .*")) {
          add(bank, item, "nobody is told that several are right", "add 'Choose all that fit.'");
        }
      }
      Set<Long> counts =
          several.stream().map(GiveAwayContentTest::right).collect(Collectors.toSet());
      if (several.size() > 1 && counts.size() == 1) {
        add(bank, null, counts + " choices are right in every item with several", "vary them");
      }
    }
    problems.none();
  }

  private static double length(ChoiceItem item, boolean right) {
    return item.choices().stream()
        .filter(c -> c.right() == right)
        .mapToInt(c -> c.text().length())
        .average()
        .orElse(0);
  }

  private static long right(ChoiceItem item) {
    return item.choices().stream().filter(Choice::right).count();
  }

  @Test
  void no_choice_is_a_trick() {
    for (Bank bank : banks.banks()) {
      for (Item item : bank.items()) {
        if (texts(item).anyMatch(t -> t.matches("(?i)((all|none|both) of .*|.* of the above.*)"))) {
          add(bank, item, "a choice points at other choices", "write a mistake people make");
        }
        if (item.head().question().matches(".*\\b(NOT|EXCEPT)\\b.*")) {
          add(bank, item, "the question turns on a 'not'", "ask for what is right");
        }
      }
    }
    problems.none();
  }

  @Test
  void every_choice_and_step_has_a_reason_of_its_own() {
    for (Bank bank : banks.banks()) {
      for (Item item : bank.items()) {
        List<String> reasons = reasons(item).toList();
        if (Set.copyOf(reasons).size() < reasons.size()) {
          add(bank, item, "two choices have the same reason", "say what comes of each");
        }
        reasons.stream()
            .filter(r -> r.length() < 15)
            .forEach(
                r -> add(bank, item, "the reason '" + r + "' is thin", "say what comes of it"));
      }
    }
    problems.none();
  }

  private static Stream<String> texts(Item item) {
    return item instanceof ChoiceItem c ? c.choices().stream().map(Choice::text) : Stream.of();
  }

  private static Stream<String> reasons(Item item) {
    return item instanceof ChoiceItem c
        ? c.choices().stream().map(Choice::because)
        : item instanceof OrderItem o ? o.steps().stream().map(s -> s.because()) : Stream.of();
  }
}
