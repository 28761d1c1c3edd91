package lapline.exams;

import static lapline.exams.InventedQuestions.choices;
import static lapline.exams.InventedQuestions.film;
import static lapline.exams.InventedQuestions.hours;
import static lapline.exams.InventedQuestions.paper;
import static lapline.exams.InventedQuestions.steps;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import lapline.content.Json;
import lapline.exams.ItemMark.State;
import lapline.exams.bank.ItemKind;
import org.junit.jupiter.api.Test;

class PaperMarkingTest {
  private static final Question SINGLE = choices(ItemKind.SINGLE, false, true, false);
  private static final Question SEVERAL = choices(ItemKind.SEVERAL, true, false, true, true, false);

  private static ItemMark marked(Question question, Map<String, String> typed) {
    return PaperMarking.mark(paper(0.5, question), typed).marks().get(0);
  }

  @Test
  void the_one_right_choice_gets_the_mark_and_any_other_gets_none() {
    assertThat(marked(SINGLE, Map.of("1", "2")).mark()).isEqualTo(1);
    assertThat(marked(SINGLE, Map.of("1", "3")).mark()).isZero();
  }

  @Test
  void what_was_chosen_is_kept_in_the_banks_own_keys() {
    assertThat(marked(SINGLE, Map.of("1", "3")).given()).isEqualTo("1");
    assertThat(marked(SEVERAL, Map.of("1.1", "x", "1.3", "x")).given()).isEqualTo("3,5");
  }

  @Test
  void each_choice_tells_its_reason_and_whether_it_was_yours() {
    ItemMark mark = marked(SINGLE, Map.of("1", "3"));
    assertThat(mark.reasons()).hasSize(3);
    assertThat(mark.reasons().get(2))
        .isEqualTo(new ItemMark.Reason("choice 3", false, "choice 3", "because 3"));
    assertThat(mark.reasons().get(1))
        .isEqualTo(new ItemMark.Reason("choice 2", true, "", "because 2"));
  }

  @Test
  void of_three_right_ones_two_without_a_wrong_one_get_two_thirds() {
    assertThat(marked(SEVERAL, Map.of("1.1", "x", "1.3", "x")).mark())
        .isCloseTo(2.0 / 3, within(1e-12));
  }

  @Test
  void a_wrong_tick_takes_one_right_one_away() {
    assertThat(marked(SEVERAL, Map.of("1.1", "x", "1.3", "x", "1.4", "x", "1.2", "x")).mark())
        .isCloseTo(2.0 / 3, within(1e-12));
  }

  @Test
  void more_wrong_than_right_ticks_get_nothing_and_not_less() {
    assertThat(marked(SEVERAL, Map.of("1.1", "x", "1.2", "x", "1.5", "x")).mark()).isZero();
  }

  @Test
  void steps_in_their_order_get_the_full_mark() {
    ItemMark mark = marked(steps(2, 1, 3), Map.of("1.1", "2", "1.2", "1", "1.3", "3"));
    assertThat(mark.mark()).isEqualTo(1);
    assertThat(mark.reasons())
        .extracting(ItemMark.Reason::text)
        .containsExactly("step 1", "step 2", "step 3");
    assertThat(mark.reasons()).allMatch(ItemMark.Reason::right);
  }

  @Test
  void neighbours_that_follow_each_other_count_wherever_they_stand() {
    // put as 4, 1, 2, 3: of the pairs 1-2, 2-3 and 3-4 the last is broken
    ItemMark mark =
        marked(steps(4, 1, 2, 3), Map.of("1.1", "1", "1.2", "2", "1.3", "3", "1.4", "4"));
    assertThat(mark.mark()).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(mark.given()).isEqualTo("4,1,2,3");
  }

  @Test
  void two_steps_that_change_places_break_every_pair_they_stand_in() {
    // put as 1, 3, 2, 4
    ItemMark mark =
        marked(steps(1, 3, 2, 4), Map.of("1.1", "1", "1.2", "2", "1.3", "3", "1.4", "4"));
    assertThat(mark.mark()).isZero();
  }

  @Test
  void a_place_given_twice_counts_for_neither_step() {
    assertThat(marked(steps(2, 1, 3), Map.of("1.1", "2", "1.2", "1", "1.3", "2")).mark()).isZero();
  }

  @Test
  void steps_without_a_place_only_lose_their_own_pairs() {
    assertThat(marked(steps(2, 1, 3), Map.of("1.1", "2", "1.2", "1")).mark()).isEqualTo(0.5);
  }

  @Test
  void a_number_on_the_limit_of_its_tolerance_is_right_and_one_beyond_is_not() {
    assertThat(marked(film(), Map.of("1", "28 um")).mark()).isEqualTo(1);
    assertThat(marked(film(), Map.of("1", "26")).mark()).isEqualTo(1);
    assertThat(marked(film(), Map.of("1", "28.1")).mark()).isZero();
  }

  @Test
  void a_number_may_be_typed_in_any_unit_of_its_kind() {
    assertThat(marked(film(), Map.of("1", "1.06 mil")).mark()).isEqualTo(1);
    assertThat(marked(film(), Map.of("1", "27,0 µm")).mark()).isEqualTo(1);
  }

  @Test
  void a_bare_number_is_in_the_unit_that_was_asked_for() {
    assertThat(marked(hours(), Map.of("1", "2")).mark()).isEqualTo(1);
    assertThat(marked(hours(), Map.of("1", "120 min")).mark()).isEqualTo(1);
  }

  @Test
  void a_common_slip_is_named() {
    assertThat(marked(film(), Map.of("1", "133")).reasons().get(0).because())
        .isEqualTo("You divided.");
    assertThat(marked(film(), Map.of("1", "80")).reasons().get(0).because()).isEmpty();
  }

  @Test
  void no_answer_is_said_and_gets_no_mark() {
    for (Question q : new Question[] {SINGLE, SEVERAL, steps(2, 1, 3), film()}) {
      ItemMark mark = marked(q, Map.of("1", " "));
      assertThat(mark.state()).isEqualTo(State.UNANSWERED);
      assertThat(mark.mark()).isZero();
      assertThat(mark.given()).isEmpty();
    }
  }

  @Test
  void a_wrong_kind_of_unit_is_no_wrong_answer_but_an_unclear_one() {
    ItemMark mark = marked(film(), Map.of("1", "27 psi"));
    assertThat(mark.state()).isEqualTo(State.UNCLEAR);
    assertThat(mark.reasons().get(0).yours()).isEqualTo("27 psi");
  }

  @Test
  void a_score_on_the_pass_mark_passes() {
    Paper four = paper(0.75, SINGLE, SINGLE, SINGLE, SINGLE);
    Map<String, String> three = Map.of("1", "2", "2", "2", "3", "2", "4", "1");
    assertThat(PaperMarking.mark(four, three).passed()).isTrue();
    assertThat(PaperMarking.mark(four, Map.of("1", "2", "2", "2")).passed()).isFalse();
  }

  @Test
  void a_score_of_thirds_that_adds_up_to_the_pass_mark_passes() {
    Paper three = paper(2.0 / 3, SEVERAL, SEVERAL, SEVERAL);
    Map<String, String> typed =
        Map.of("1.1", "x", "1.3", "x", "2.1", "x", "2.3", "x", "3.1", "x", "3.3", "x");
    assertThat(PaperMarking.mark(three, typed).passed()).isTrue();
  }

  @Test
  void a_paper_and_its_result_read_back_from_their_json_are_the_same() {
    Paper paper = paper(0.75, SINGLE, SEVERAL, steps(2, 1, 3), film(), hours());
    PaperResult result = PaperMarking.mark(paper, Map.of("1", "2", "4", "133"));
    assertThat(Json.read(Json.write(paper), Paper.class)).isEqualTo(paper);
    assertThat(Json.read(Json.write(result), PaperResult.class)).isEqualTo(result);
  }
}
