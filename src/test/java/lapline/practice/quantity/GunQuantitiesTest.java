package lapline.practice.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.WrittenPanel;
import lapline.practice.quantity.Measured.Missing;
import lapline.practice.quantity.Measured.Value;
import lapline.practice.quantity.Measured.Values;
import org.junit.jupiter.api.Test;

/** Numbers by hand from the definitions; uncertainties by JCGM 100:2008, formula (10). */
class GunQuantitiesTest {
  private final WrittenPanel panel =
      WrittenPanel.against(
          WrittenPanel.criterion(
              "pressure",
              "gun-pressure",
              "150 to 180 kPa",
              "critical: yes, weight: 1, fade: 9 kPa"));

  private List<Value> values(String quantity) {
    return ((Values) panel.measure(quantity)).values();
  }

  @Test
  void overlap_is_one_less_step_over_fan() {
    panel.put("fan-width", "250").put("pass-spacing.c1.p2", "75").put("pass-spacing.c2.p4", "125");
    assertThat(values("overlap").get(0).estimate().value()).isCloseTo(0.70, within(1e-9));
    // hypot(5/250, 75·8/250²): the step read to 5 mm, the fan to 8 mm
    assertThat(values("overlap").get(0).estimate().standardUncertainty())
        .isCloseTo(0.0221848, within(1e-6));
    assertThat(values("overlap").get(1).estimate().value()).isCloseTo(0.50, within(1e-9));
    assertThat(values("overlap").get(1).where().key()).isEqualTo("pass-spacing.c2.p4");
  }

  @Test
  void overlap_without_a_fan_says_what_is_wanted() {
    panel.put("pass-spacing.c1.p2", "75");
    assertThat(panel.measure("overlap")).isEqualTo(Missing.of("pass-spacing", "fan-width"));
  }

  @Test
  void distance_is_the_mean_along_each_pass() {
    panel
        .put("distance-start.c1.p1", "100")
        .put("distance-middle.c1.p1", "110")
        .put("distance-end.c1.p1", "120")
        .put("distance-middle.c1.p2", "90");
    assertThat(values("distance-mean").get(0).estimate().value()).isCloseTo(0.11, within(1e-12));
    assertThat(values("distance-mean").get(0).estimate().standardUncertainty())
        .isCloseTo(0.005 / Math.sqrt(3), within(1e-9));
    assertThat(values("distance-mean").get(1).estimate().value()).isCloseTo(0.09, within(1e-12));
  }

  @Test
  void drift_is_positive_where_the_gun_moves_away() {
    panel.put("distance-start.c1.p1", "100").put("distance-end.c1.p1", "120");
    assertThat(panel.value("distance-drift").estimate().value()).isCloseTo(0.02, within(1e-12));
    assertThat(panel.value("distance-drift").estimate().standardUncertainty())
        .isCloseTo(0.005 * Math.sqrt(2), within(1e-9));
  }

  @Test
  void a_pass_with_one_end_only_has_no_drift() {
    panel.put("distance-start.c1.p1", "100").put("distance-middle.c1.p1", "110");
    assertThat(panel.measure("distance-drift"))
        .isEqualTo(Missing.of("distance-start", "distance-end"));
  }

  @Test
  void a_stroke_goes_from_edge_to_edge_unless_its_length_is_given() {
    panel.put("stroke-time.c1.p1", "1.5 s");
    assertThat(panel.value("stroke-speed").estimate().value()).isCloseTo(0.4, within(1e-9));
    panel.put("stroke-length", "750");
    assertThat(panel.value("stroke-speed").estimate().value()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void a_wait_is_as_written_down() {
    panel.put("flash.c2", "10 min").put("coat-start.c1", "14:00").put("coat-start.c2", "14:20");
    assertThat(panel.value("flash-time").estimate().value()).isEqualTo(600);
    assertThat(panel.value("flash-time").where().coat()).isEqualTo(2);
  }

  @Test
  void a_wait_not_written_down_comes_from_the_starts_less_strokes_and_turns() {
    panel
        .put("coat-start.c1", "23:55")
        .put("coat-start.c2", "00:07")
        .put("stroke-time.c1.p2", "2 s");
    int passes = panel.task().passesPerCoat();
    Value wait = panel.value("flash-time");
    assertThat(wait.estimate().value()).isCloseTo(720 - 2.0 * passes - (passes - 1), within(1e-9));
    // two clocks read to the minute, the strokes by one reading, a turn of 0 to 2 s
    double strokes = passes * 0.1;
    double turns = (passes - 1) * 2 / Math.sqrt(12);
    assertThat(wait.estimate().standardUncertainty())
        .isCloseTo(Math.sqrt(2 * 17 * 17 + strokes * strokes + turns * turns), within(1e-9));
  }

  @Test
  void starts_alone_tell_no_wait_since_nobody_knows_how_long_the_coat_took() {
    panel.put("coat-start.c1", "14:00").put("coat-start.c2", "14:20");
    assertThat(panel.measure("flash-time")).isEqualTo(Missing.of("flash"));
  }
}
