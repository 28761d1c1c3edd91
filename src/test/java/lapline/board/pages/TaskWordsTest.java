package lapline.board.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.pages.Messages;
import org.junit.jupiter.api.Test;

/** The name of a cause goes on in a heading without its full stop. */
class TaskWordsTest {

  @Test
  void no_full_stop_stands_before_what_follows_a_cause() {
    Messages messages = new Messages();
    String cause = messages.say("score.doubt", "Film");
    assertThat(cause).endsWith("either way.");
    assertThat(messages.say("board.found.title", TaskWords.withoutStop(cause), 7, 90))
        .startsWith(cause.substring(0, cause.length() - 1) + ": 7 panels")
        .doesNotContain(".:");
    assertThat(TaskWords.withoutStop("Film: too near the limit"))
        .isEqualTo("Film: too near the limit");
  }
}
