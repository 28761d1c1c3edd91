package lapline.exams.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lapline.content.ContentFiles;
import lapline.content.Problem;
import lapline.content.units.Quantity;
import lapline.exams.bank.Item.ComputedItem;
import lapline.exams.bank.Item.NumberItem;
import lapline.trade.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BankReaderTest {
  private static final String WHOLE =
      """
      title: Clear
      paper:
        single: 1
        number: 1
        computed: 1
        order: 1
        pass: 75 %
        wait: 30 min
      items:
        - id: tack
          kind: single
          topic: film
          question: At {25 mm | 1 in}, what?
          choices:
            - text: One
              right: yes
              because: So.
            - text: Two
              because: Not so.
            - text: Three
              because: Not so.
          source: common practice, no source
        - id: dry
          kind: number
          topic: film
          question: How much?
          answer: 13 mm | 0.5 in
          within: 1 mm
          worked: It is {answer}.
          slips:
            - answer: 63 mm | 2.5 in
              because: Added.
          source: common practice, no source
        - id: two-coats
          kind: computed
          topic: film
          question: Wet {wet}, solids {solids}?
          values:
            wet: 50 to 70 by 5 um | 2 to 3 by 0.25 mil
            solids: 40 %
          calculation: dry-from-wet
          within: 2 %
          worked: "{wet} gives {answer}"
          slips:
            - given: wet
              because: That is wet.
          source: common practice, no source
        - id: order
          kind: order
          topic: film
          question: Which order?
          steps:
            - text: A
              because: First.
            - text: B
              because: Then.
            - text: C
              because: Last.
          source: common practice, no source
      """;

  @TempDir private Path root;

  private QuestionBanks read(String text) throws IOException {
    Files.createDirectories(root.resolve("question-banks"));
    Files.writeString(root.resolve("question-banks/40-clear.yaml"), text);
    return new BankReader(new ContentFiles(root)).read();
  }

  private void refused(String from, String to, String lineOf, String whatIsWrong)
      throws IOException {
    assertThat(WHOLE).contains(from);
    String broken = WHOLE.replaceFirst(java.util.regex.Pattern.quote(from), to);
    QuestionBanks banks = read(broken);
    assertThat(banks.bank("clear")).as("broken banks are left out").isEmpty();
    Problem told =
        banks.problems().stream()
            .filter(p -> p.whatIsWrong().contains(whatIsWrong))
            .findFirst()
            .orElseThrow(() -> new AssertionError(banks.problems()));
    int line = (int) broken.substring(0, broken.indexOf(lineOf)).lines().count();
    assertThat(told.line()).isBetween(line, line + 1);
    assertThat(told.whatToWrite()).isNotBlank();
  }

  @Test
  void a_bank_is_named_after_its_file_without_the_number_in_front() throws IOException {
    QuestionBanks banks = read(WHOLE);
    assertThat(banks.problems()).isEmpty();
    assertThat(banks.bank("clear").orElseThrow().items()).hasSize(4);
  }

  @Test
  void an_answer_may_be_given_for_both_systems() throws IOException {
    Bank bank = read(WHOLE).bank("clear").orElseThrow();
    NumberItem item = (NumberItem) bank.of(ItemKind.NUMBER).get(0);
    assertThat(item.answer().metric())
        .extracting(Quantity::unit, Quantity::written)
        .containsExactly(Unit.MILLIMETRE, "13\u00a0mm");
    assertThat(item.answer().us())
        .extracting(Quantity::unit, Quantity::written)
        .containsExactly(Unit.INCH, "0.5\u00a0in");
  }

  @Test
  void a_range_holds_every_step_from_its_first_to_its_last_value() throws IOException {
    Bank bank = read(WHOLE).bank("clear").orElseThrow();
    ComputedItem item = (ComputedItem) bank.of(ItemKind.COMPUTED).get(0);
    assertThat(item.values().get("wet").us().all())
        .extracting(Quantity::written)
        .containsExactly(
            "2\u00a0mil", "2.25\u00a0mil", "2.5\u00a0mil", "2.75\u00a0mil", "3\u00a0mil");
    assertThat(item.values().get("solids").us().all()).hasSize(1);
  }

  @Test
  void a_choice_without_its_reason_is_refused() throws IOException {
    refused("because: Not so.", "because:", "because:\n", "this is empty");
  }

  @Test
  void a_single_choice_item_has_exactly_one_right_choice() throws IOException {
    refused("right: yes", "right: no", "- id: tack", "0 choices are right");
  }

  @Test
  void a_quantity_that_differs_between_the_systems_is_refused() throws IOException {
    refused("{25 mm | 1 in}", "{25 mm | 2 in}", "question: At", "are not the same quantity");
  }

  @Test
  void a_place_without_its_value_is_refused() throws IOException {
    refused("Wet {wet}", "Wet {wett}", "question: Wet", "there is no value 'wett'");
  }

  @Test
  void a_calculation_that_lacks_a_value_is_refused() throws IOException {
    refused("solids: 40 %", "solid: 40 %", "id: two-coats", "needs the value 'solids'");
  }

  @Test
  void a_range_whose_steps_do_not_meet_its_end_is_refused() throws IOException {
    refused("50 to 70 by 5 um", "50 to 72 by 5 um", "wet: 50", "is not understood");
  }

  @Test
  void a_tolerance_in_another_kind_of_unit_is_refused() throws IOException {
    refused("within: 1 mm", "within: 1 psi", "within: 1 psi", "is no tolerance");
  }

  @Test
  void two_items_of_one_name_are_refused() throws IOException {
    refused("- id: dry", "- id: tack", "id: tack\n    kind: number", "is 'tack' too");
  }

  @Test
  void a_paper_that_cannot_be_filled_is_refused() throws IOException {
    refused("single: 1", "single: 2", "title:", "draws 2 of kind single, and there are 1");
  }

  @Test
  void the_version_of_an_item_changes_with_its_key_and_not_with_its_neighbours()
      throws IOException {
    Item before = read(WHOLE).bank("clear").orElseThrow().items().get(0);
    Item neighbour =
        read(WHOLE.replace("That is wet.", "Wet film.")).bank("clear").orElseThrow().items().get(0);
    Item reworded =
        read(WHOLE.replace("text: Two", "text: Zwei")).bank("clear").orElseThrow().items().get(0);
    assertThat(neighbour.version()).isEqualTo(before.version());
    assertThat(reworded.version()).isNotEqualTo(before.version());
  }
}
