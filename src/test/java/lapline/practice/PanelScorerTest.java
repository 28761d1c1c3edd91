package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PanelScorerTest {
  private static final String PRESSURE =
      criterion(
          "pressure", "gun-pressure", "150 to 180 kPa", "critical: yes, weight: 3, fade: 9 kPa");
  private static final String FLUID =
      criterion("fluid", "fluid-turns", "2 to 3", "weight: 1, fade: 0.5");

  private final WrittenPanel panel = WrittenPanel.against(PRESSURE, FLUID);

  @Test
  void a_panel_is_accepted_when_every_critical_criterion_is_met() {
    panel.put("gun-pressure", "165 kPa").put("fluid-turns", "9");
    assertThat(panel.score().accepted()).isTrue();
    assertThat(panel.score().standing()).isEmpty();
  }

  @Test
  void a_critical_criterion_in_doubt_keeps_it_from_being_accepted() {
    panel.put("gun-pressure", "178 kPa").put("fluid-turns", "2.5");
    assertThat(panel.score().accepted()).isFalse();
    assertThat(panel.score().standing()).containsExactly("pressure");
  }

  @Test
  void a_critical_criterion_that_was_not_measured_keeps_it_from_being_accepted() {
    panel.put("fluid-turns", "2.5");
    assertThat(panel.score().accepted()).isFalse();
    assertThat(panel.score().standing()).containsExactly("pressure");
  }

  @Test
  void the_practice_score_is_the_weighted_mean_of_what_was_judged() {
    panel.put("gun-pressure", "165 kPa").put("fluid-turns", "9");
    assertThat(panel.score().practiceScore()).isCloseTo(75, within(0.01));
    panel.leaveOut("gun-pressure");
    assertThat(panel.score().practiceScore()).isCloseTo(0, within(0.01));
  }

  @Test
  void an_empty_sheet_scores_nothing_and_is_not_accepted() {
    assertThat(panel.score().practiceScore()).isZero();
    assertThat(panel.score().accepted()).isFalse();
    assertThat(panel.score().film()).isNull();
  }

  @Test
  void a_yes_or_no_rule_without_weight_decides_on_acceptance_alone() {
    WrittenPanel film =
        WrittenPanel.against(
            criterion("film", "film-build", "60 to 80 um", "weight: 1, fade: 5 um"),
            criterion("rule", "film-plan", "at least 1", "critical: yes, weight: 0, fade: 1"));
    film.putAtPlaces("film-after", 66, 66, 66, 66, 66, 66, 66, 66, 66, 40);
    assertThat(film.score().accepted()).isFalse();
    assertThat(film.score().practiceScore()).isGreaterThan(90);
  }

  @Test
  void the_film_map_needs_three_places() {
    WrittenPanel film =
        WrittenPanel.against(
            criterion("film", "film-build", "50 to 65 um", "critical: yes, weight: 1, fade: 5 um"));
    assertThat(film.putAtPlaces("film-after", 57, 58).score().film()).isNull();
    assertThat(film.putAtPlaces("film-after", 57, 58, 56).score().film()).isNotNull();
  }

  @Test
  void the_same_sheet_gives_the_same_score_again() {
    panel.put("gun-pressure", "178 kPa").put("fluid-turns", "2.5");
    panel.putAtPlaces("film-after", 57, 58, 56, 60, 61, 55, 57, 58, 59, 57);
    assertThat(panel.score()).isEqualTo(panel.score());
  }
}
