package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.pages.Messages;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
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

  @Test
  void a_reading_to_be_taken_again_stands_in_the_title_with_its_place() {
    WrittenPanel clear = WrittenPanel.under("clear/two-coats");
    clear.putAtPlaces("film-before", 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40);
    clear.putAtPlaces("film-after", 95, 94, 96, 95, 93, 95, 96, 201, 95, 94, 95, 96, 94, 95, 95);
    assertThat(title(clear.task(), clear.score()))
        .isEqualTo("Not yet: read place 8 again, its film fits nothing around it");
    assertThat(title(clear.task(), clear.score(), true))
        .isEqualTo("Not yet: look at place 8, its film still fits nothing around it");
  }

  /** The page does not begin with one thing and go on with another. */
  @Test
  void the_title_is_about_what_stands_first_below_it() {
    WrittenPanel clear = WrittenPanel.under("clear/two-coats");
    clear.put("mix-amount.s1", "400").put("mix-amount.s2", "108.5").put("mix-amount.s3", "100");
    clear.task().panel().places().forEach(p -> swung(clear, p));
    PanelScore score = clear.score();
    assertThat(score.findings().get(0).id()).isEqualTo("arcing");
    assertThat(title(clear.task(), score)).isEqualTo("Not yet: film too thin at both ends");
  }

  @Test
  void no_area_that_a_single_reading_makes_stands_in_the_title() {
    WrittenPanel clear = WrittenPanel.under("clear/two-coats");
    clear.put("mix-amount.s1", "400").put("mix-amount.s2", "100").put("mix-amount.s3", "100");
    clear.task().panel().places().forEach(p -> swung(clear, p));
    clear.put("film-after.at8", "240");
    PanelScore score = clear.score();
    assertThat(score.film().setAside()).containsExactly(8);
    assertThat(score.findings().get(0).id()).isEqualTo("arcing");
    assertThat(title(clear.task(), score)).isEqualTo("Not yet: film too thin at both ends");
  }

  /** Not much more than half at both ends. */
  private static void swung(WrittenPanel panel, PanelOutline.Place place) {
    double fromMiddle = 2 * place.x() / panel.task().panel().width() - 1;
    double film = 66 * (1 - 0.44 * fromMiddle * fromMiddle);
    panel.put("film-before.at" + place.number(), "40");
    panel.put("film-after.at" + place.number(), String.valueOf(40 + film));
  }

  private String title(PanelScore score) {
    return title(lid.task(), score);
  }

  private static String title(PracticeTask task, PanelScore score) {
    return title(task, score, false);
  }

  private static String title(PracticeTask task, PanelScore score, boolean stands) {
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    return new ResultTitle(
            task, score, new CriterionWriter(words, WrittenPanel.COURSE.measurands()::find), stands)
        .written()
        .replace('\u00a0', ' ');
  }
}
