package lapline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.pages.Messages;
import lapline.practice.WrittenPanel;
import lapline.practice.pages.CriterionWriter;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A program gets targets in the words a person reads, beside the numbers it computes with. */
class ScoreTextTest {
  private final CriterionWriter metric =
      CriterionWriter.of(new Messages(), UnitSystem.METRIC, WrittenPanel.COURSE);

  @Test
  void a_rule_is_kept_and_of_a_choice_the_good_one_is_named() {
    assertThat(target("clear/two-coats", "film-plan")).isEqualTo("kept");
    assertThat(target("preparing/flat-panel", "water-break")).isEqualTo("Holds");
  }

  private String target(String task, String quantity) {
    var score = WrittenPanel.under(task).score();
    String criterion =
        score.results().stream()
            .filter(r -> r.criterion().quantity().equals(quantity))
            .findFirst()
            .orElseThrow()
            .criterion()
            .id();
    return ScoreText.of(score, metric).criteria().stream()
        .filter(c -> c.criterion().equals(criterion))
        .findFirst()
        .orElseThrow()
        .target();
  }
}
