package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.pages.Messages;
import lapline.practice.PanelScore;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The title of a result is its answer, with the number that stands in the way. */
class ResultTitleTest {
  private final WrittenPanel lid = WrittenPanel.under("masking/hatch-lid-aperture");

  @Test
  void what_cost_most_stands_in_the_title_with_its_value_and_target() {
    lid.put("slack-film", "tight").put("hard-edge-length", "0");
    lid.put("apertures-missed", "1").put("bleed-length", "2500 mm");
    assertThat(title(lid.score()))
        .isEqualTo("Not yet: Paint crept under the tape 2.5 m, target at most 5 mm");
    lid.put("bleed-length", "0");
    assertThat(title(lid.score())).isEqualTo("Not yet: Openings missed 1, target none");
  }

  @Test
  void what_was_not_measured_is_said_where_nothing_was_missed() {
    lid.put("slack-film", "tight").put("hard-edge-length", "0").put("apertures-missed", "0");
    assertThat(title(lid.score()))
        .isEqualTo("Not yet: Paint crept under the tape was not measured");
  }

  @Test
  void what_was_missed_goes_before_what_was_not_measured_though_that_weighs_more() {
    lid.put("slack-film", "tight").put("apertures-missed", "0").put("hard-edge-length", "2500 mm");
    assertThat(title(lid.score()))
        .isEqualTo("Not yet: Hard edge where it should be soft 2.5 m, target at most 10 mm");
  }

  @Test
  void what_is_in_doubt_goes_before_what_was_not_measured() {
    lid.put("slack-film", "tight").put("apertures-missed", "0").put("hard-edge-length", "10 mm");
    assertThat(title(lid.score()))
        .isEqualTo("Not yet: Hard edge where it should be soft is in doubt");
  }

  private String title(PanelScore score) {
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    return new ResultTitle(
            lid.task(), score, new CriterionWriter(words, WrittenPanel.COURSE.measurands()::find))
        .written()
        .replace('\u00a0', ' ');
  }
}
