package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.practice.PanelScore.Finding;
import org.junit.jupiter.api.Test;

class PanelFindingsTest {
  private static final String RULES =
      """
        - {criterion: pressure, side: low, cause: It is too low., change: Turn it up., rivals: [A bad gauge.]}
        - {criterion: pressure, side: high, cause: It is too high., change: Turn it down.}
        - {criterion: fluid, side: any, cause: The knob is off., change: Count the turns.}
        - {criterion: film, side: low, cause: The film is thin., change: Go slower.}
      """;
  private static final String PRESSURE =
      criterion(
          "pressure", "gun-pressure", "150 to 180 kPa", "critical: yes, weight: 1, fade: 9 kPa");
  private static final String FLUID =
      criterion("fluid", "fluid-turns", "2 to 3", "weight: 1, fade: 0.5");
  private static final String FILM =
      criterion("film", "film-build", "50 to 65 um", "critical: yes, weight: 1, fade: 6 um");

  private final WrittenPanel panel = WrittenPanel.withFindings(RULES, PRESSURE, FLUID, FILM);

  private List<String> ids() {
    return panel.score().findings().stream().map(Finding::id).toList();
  }

  @Test
  void the_side_that_a_value_lies_on_chooses_the_cause() {
    panel.put("gun-pressure", "120 kPa");
    Finding low = panel.score().findings().get(0);
    assertThat(low.id()).isEqualTo("pressure.low");
    assertThat(low.cause().text()).isEqualTo("It is too low.");
    assertThat(low.change().text()).isEqualTo("Turn it up.");
    assertThat(low.rivals()).extracting(r -> r.cause().text()).containsExactly("A bad gauge.");
    assertThat(low.evidence().get(0).key()).isEqualTo("score.evidence.low");
    panel.put("gun-pressure", "210 kPa");
    assertThat(ids()).containsExactly("pressure.high");
  }

  @Test
  void what_is_met_has_no_cause() {
    panel.put("gun-pressure", "165 kPa").put("fluid-turns", "2.5");
    assertThat(ids()).isEmpty();
  }

  @Test
  void what_cost_most_comes_first_and_critical_counts_double() {
    panel.put("gun-pressure", "120 kPa").put("fluid-turns", "9");
    assertThat(ids()).containsExactly("pressure.low", "fluid.high");
    panel.put("gun-pressure", "145 kPa");
    assertThat(ids()).containsExactly("fluid.high", "pressure.low");
  }

  @Test
  void thin_film_is_told_once_by_the_cause_that_has_looked_at_the_mix() {
    panel.putAtPlaces("film-after", 36, 37, 35, 36, 37, 36, 35, 37, 36, 36, 35, 37, 36, 36, 36);
    assertThat(ids()).containsOnlyOnce("too-little").doesNotContain("film.low");
  }

  @Test
  void film_just_under_its_limit_is_told_in_the_tasks_words() {
    panel.putAtPlaces("film-after", 50, 49, 50, 51, 50, 49, 50, 51, 50, 50, 49, 51, 50, 50, 50);
    assertThat(ids()).contains("film.low").doesNotContain("too-little");
  }
}
