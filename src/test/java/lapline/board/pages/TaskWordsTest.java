package lapline.board.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lapline.content.ContentFiles;
import lapline.pages.Messages;
import lapline.practice.PracticeTasks;
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

  @Test
  void a_finding_in_a_tasks_own_words_is_of_a_criterion_and_one_of_the_film_is_not() {
    PracticeTasks course = PracticeTasks.read(new ContentFiles(Path.of("")));
    assertThat(TaskWords.criterion(course, "coverage/spray-out-card", "hiding.high"))
        .hasValue("Coats until the card is hidden");
    assertThat(TaskWords.criterion(course, "clear/two-coats", "arcing")).isEmpty();
    assertThat(TaskWords.criterion(course, "gone", "hiding.high")).isEmpty();
  }
}
