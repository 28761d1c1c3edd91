package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.pages.Messages;
import lapline.practice.PanelScore;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What speaks for a cause, said as somebody in the shop would: no 1 for a yes, no 0 for a none. */
class CriterionEvidenceTest {
  private final WrittenPanel lid = WrittenPanel.under("masking/hatch-lid-aperture");
  private final WrittenPanel clear = WrittenPanel.under("clear/two-coats");

  @Test
  void a_choice_is_told_by_its_name() {
    lid.put("slack-film", "slack");
    assertThat(evidence(lid, "film.high")).containsExactly("Film tight: Slack, target Tight.");
  }

  @Test
  void a_count_that_should_be_none_is_told_so() {
    lid.put("apertures-missed", "2");
    assertThat(evidence(lid, "apertures.high")).containsExactly("Openings missed: 2, target none.");
  }

  @Test
  void a_length_keeps_its_unit_and_uncertainty() {
    lid.put("bleed-length", "35 mm");
    assertThat(evidence(lid, "bleed.high"))
        .containsExactly("Paint crept under the tape: 35.0 ± 2.0 mm, target at most 5 mm.");
  }

  @Test
  void a_share_of_the_area_ends_at_nothing_and_at_all() {
    clear.putAtPlaces("film-before", 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    clear.putAtPlaces("film-after", 44, 52, 47, 49, 54, 46, 51, 45, 53, 48, 50, 47, 52, 46, 49);
    var film = clear.score().film();
    assertThat(film.shareLow()).isGreaterThan(0.02);
    assertThat(evidence(clear, "film-even.low"))
        .containsExactly(
            "Share of the panel inside the film range: %.0f %% (%.0f to %.0f %%), target at least 80 %%."
                .formatted(
                    100 * film.shareInside(), 100 * film.shareLow(), 100 * film.shareHigh()));
    assertThat(evidence(clear, "film-rule.low"))
        .containsExactly(
            "Few thin places, none far too thin (counting rule of ISO 19840): broken, target kept.");
  }

  @Test
  void what_went_into_a_number_is_called_by_its_name_and_a_part_of_a_mix_as_on_the_sheet() {
    clear.put("air-temperature", "21 °C").put("panel-temperature", "20 °C").put("humidity", "55");
    clear.put("mix-amount.s1", "400").put("mix-amount.s2", "100").put("mix-amount.s3", "100");
    assertThat(inputs("dew")).contains("Dew point", "Relative humidity");
    assertThat(inputs("mix")).containsExactly("Clear", "Hardener", "Reducer");
  }

  private List<String> inputs(String criterion) {
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    CriterionWriter criteria = new CriterionWriter(words, WrittenPanel.COURSE.measurands()::find);
    return clear.score().result(criterion).orElseThrow().working().inputs().stream()
        .map(criteria::input)
        .toList();
  }

  private static List<String> evidence(WrittenPanel panel, String finding) {
    PanelScore score = panel.score();
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    CriterionWriter criteria = new CriterionWriter(words, WrittenPanel.COURSE.measurands()::find);
    return score.findings().stream()
        .filter(f -> f.id().equals(finding))
        .flatMap(f -> criteria.evidence(panel.task(), score, f).stream())
        .map(said -> said.replace('\u00a0', ' '))
        .toList();
  }
}
