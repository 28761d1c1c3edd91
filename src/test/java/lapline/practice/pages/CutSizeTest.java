package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import lapline.pages.Messages;
import lapline.practice.PracticeTask;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A sheet's words and the drawing beside them name one size of the panel. */
class CutSizeTest {
  private static final Pattern SIZE =
      Pattern.compile("(\\d+\\u00a0(?:mm|in)) by (\\d+\\u00a0(?:mm|in))");

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void the_drawing_says_the_size_that_the_task_says(UnitSystem units) {
    PhraseWriter words = new PhraseWriter(new Messages(), units);
    List<String> told =
        WrittenPanel.COURSE.all().stream().flatMap(t -> differing(t, words).stream()).toList();
    assertThat(told).isEmpty();
    assertThat(WrittenPanel.COURSE.all().stream().filter(t -> sizes(t, words).size() > 0))
        .as("tasks that say a size")
        .hasSizeGreaterThan(2);
  }

  private static List<String> differing(PracticeTask task, PhraseWriter words) {
    String drawn = words.cutSize(task.panel().width(), task.panel().height());
    return sizes(task, words).stream().filter(size -> !drawn.endsWith(size)).toList();
  }

  private static List<String> sizes(PracticeTask task, PhraseWriter words) {
    return task.prepare().stream()
        .flatMap(line -> SIZE.matcher(words.words(line)).results())
        .map(m -> m.group(1) + " × " + m.group(2))
        .toList();
  }
}
