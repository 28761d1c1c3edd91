package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** An instructor asks whether a question of the exam is any good. */
class QuestionsJourneyIT extends Journey {

  @Test
  void an_instructor_sets_a_question_aside_with_a_reason_and_brings_it_back() throws Exception {
    signIn("instructor2");
    open("/teach/items?unit=masking");
    assertThat(title()).startsWith("Masking: ");
    isAccessible();
    open("/teach/item?unit=masking&item=soft-edge");

    press("aside:go");
    untilText("Write why");
    isAccessible();
    type("aside:reason", "Our booth has no foam tape at present.");
    press("aside:go");
    untilText("Set aside. It is drawn no more.");
    assertThat(text()).contains("Our booth has no foam tape at present.");
    pictures("questions-one");

    press("back:go");
    untilText("Brought back. It can be drawn again.");
  }
}
