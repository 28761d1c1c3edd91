package lapline.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CheckTest {
  private final Check check =
      new Check(
          "shine",
          "Where is shine left?",
          List.of(
              new Check.Choice("edge", true, "The machine stays away from it."),
              new Check.Choice("middle", false, "The machine works there."),
              new Check.Choice("holes", true, "The disc cannot get in.")));

  @Test
  void all_right_choices_and_no_other_is_right() {
    assertThat(check.answer(Set.of(0, 2)).right()).isTrue();
    assertThat(check.answer(Set.of(0, 1, 2)).right()).isFalse();
  }

  @Test
  void a_right_choice_alone_is_told_that_another_is_missing_but_not_which() {
    Check.Answer answer = check.answer(Set.of(0));
    assertThat(answer.right()).isFalse();
    assertThat(answer.stillMissing()).isEqualTo(1);
    assertThat(answer.replies())
        .containsExactly(new Check.Reply(0, "edge", true, "The machine stays away from it."));
  }

  @Test
  void a_wrong_choice_hears_why() {
    assertThat(check.answer(Set.of(1)).replies())
        .extracting(Check.Reply::because)
        .containsExactly("The machine works there.");
  }

  @Test
  void nothing_chosen_and_choices_that_do_not_exist_are_not_right() {
    assertThat(check.answer(Set.of()).right()).isFalse();
    assertThat(check.answer(Set.of(7, -1))).isEqualTo(check.answer(Set.of()));
  }

  @Test
  void a_part_of_the_right_ones_is_right_so_far_and_with_a_wrong_one_it_is_not() {
    assertThat(check.answer(Set.of(0)).rightSoFar()).isTrue();
    assertThat(check.answer(Set.of(0, 1)).rightSoFar()).isFalse();
    assertThat(check.answer(Set.of(0, 2)).rightSoFar()).as("nothing is missing").isFalse();
    assertThat(check.answer(Set.of()).rightSoFar()).isFalse();
  }

  @Test
  void several_right_choices_call_for_boxes() {
    assertThat(check.several()).isTrue();
  }
}
