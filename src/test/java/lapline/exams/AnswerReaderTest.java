package lapline.exams;

import static lapline.exams.InventedQuestions.choices;
import static lapline.exams.InventedQuestions.film;
import static lapline.exams.InventedQuestions.paper;
import static lapline.exams.InventedQuestions.steps;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import lapline.exams.bank.ItemKind;
import org.junit.jupiter.api.Test;

class AnswerReaderTest {

  private static Answer read(Question question, Map<String, String> typed) {
    return new AnswerReader(paper(1, question), typed).answer(1);
  }

  private static String flaw(Question question, Map<String, String> typed) {
    return read(question, typed).flaw().map(Answer.Flaw::key).orElse("");
  }

  @Test
  void what_was_understood_is_shown_in_the_unit_asked_for() {
    assertThat(read(film(), Map.of("1", "2.4 mil")))
        .isInstanceOfSatisfying(
            Answer.Measured.class, m -> assertThat(m.written()).isEqualTo("61\u00a0µm"));
  }

  @Test
  void a_unit_of_another_kind_is_told_with_the_unit_that_would_do() {
    Answer.Flaw flaw = read(film(), Map.of("1", "27 psi")).flaw().orElseThrow();
    assertThat(flaw.key()).isEqualTo("exams.flaw.WRONG_UNIT");
    assertThat(flaw.args()).containsExactly("psi", "µm");
  }

  @Test
  void words_and_endless_text_are_told_and_never_break_anything() {
    assertThat(flaw(film(), Map.of("1", "quite a lot"))).isEqualTo("exams.flaw.NOT_A_NUMBER");
    assertThat(flaw(film(), Map.of("1", "9".repeat(500)))).isEqualTo("exams.flaw.TOO_LONG");
    assertThat(flaw(film(), Map.of("1", "1e300"))).isEqualTo("exams.flaw.NOT_FINITE");
  }

  @Test
  void a_place_given_twice_is_told_before_a_missing_one() {
    Question order = steps(2, 1, 3);
    assertThat(flaw(order, Map.of("1.1", "2", "1.2", "2"))).isEqualTo("exams.flaw.place-twice");
    assertThat(flaw(order, Map.of("1.1", "2", "1.2", "1"))).isEqualTo("exams.flaw.place-missing");
    assertThat(flaw(order, Map.of("1.1", "2", "1.2", "1", "1.3", "3"))).isEmpty();
  }

  @Test
  void a_choice_that_does_not_exist_is_no_answer() {
    Question single = choices(ItemKind.SINGLE, true, false);
    assertThat(read(single, Map.of("1", "7"))).isEqualTo(new Answer.None());
    assertThat(read(single, Map.of("1", "0"))).isEqualTo(new Answer.None());
    assertThat(read(single, Map.of("1", "x"))).isEqualTo(new Answer.None());
    assertThat(read(steps(2, 1, 3), Map.of("1.1", "4"))).isEqualTo(new Answer.None());
  }
}
