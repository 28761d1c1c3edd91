package lapline.board.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.judgement.progress.PanelsNeeded;
import lapline.pages.Messages;
import org.junit.jupiter.api.Test;

/** What a forecast promises of itself, and what its record says it promised, are one number. */
class ForecastWordsTest {

  @Test
  void four_of_five_is_the_least_that_is_promised_and_the_record_says_why_it_may_be_more() {
    Messages messages = new Messages();
    assertThat(PanelsNeeded.COVERAGE).isEqualTo(4 / 5.0);
    assertThat(messages.say("forecast.panels", 5, 3, 9)).contains("in at least four of five");
    assertThat(messages.say("forecast.record", 12, 9, 0.75, 0.83, 4))
        .contains("83\u00a0% should have. That is the four of five and somewhat more");
  }
}
