package lapline.practice.quantity;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.WrittenPanel;
import lapline.practice.quantity.Measured.Missing;
import lapline.practice.quantity.Measured.Value;
import lapline.practice.quantity.Measured.Values;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

/** Mix, climate, hiding, blend and sanding: numbers by hand from the definitions. */
class PanelQuantitiesTest {
  private final WrittenPanel panel =
      WrittenPanel.against(
          criterion("dew", "dew-margin", "at least 3 °C", "critical: yes, weight: 1, fade: 1 °C"));

  private double value(String quantity) {
    return panel.value(quantity).estimate().value();
  }

  private double conformance(String quantity, double least, double most) {
    return panel.value(quantity).conformance().applyAsDouble(new TargetRange(least, most));
  }

  @Test
  void the_mix_is_judged_by_the_part_that_strays_most() {
    panel.put("mix-amount.s1", "400").put("mix-amount.s2", "100").put("mix-amount.s3", "120");
    // 120 of 620 where 1 of 6 is wanted: 6 · 120 / 620 − 1
    assertThat(value("mix-ratio")).isCloseTo(0.161290, within(1e-6));
    assertThat(panel.value("mix-ratio").where().step()).isEqualTo(3);
  }

  @Test
  void a_mix_with_a_part_not_written_down_is_not_judged() {
    panel.put("mix-amount.s1", "400").put("mix-amount.s2", "100");
    assertThat(panel.measure("mix-ratio")).isEqualTo(Missing.of("mix-amount"));
  }

  /** Dew point 9.2552 °C at 20 °C and 50 %: WMO-No. 8, Magnus form with 17.62 and 243.12 °C. */
  @Test
  void the_dew_margin_is_panel_less_dew_point() {
    panel.put("air-temperature", "20").put("humidity", "50 %").put("panel-temperature", "15");
    assertThat(value("dew-margin")).isCloseTo(5.7448, within(1e-4));
    assertThat(panel.value("dew-margin").estimate().standardUncertainty()).isBetween(1.0, 2.0);
  }

  @Test
  void dry_air_has_no_dew_point() {
    panel.put("air-temperature", "20").put("humidity", "0 %").put("panel-temperature", "15");
    assertThat(panel.measure("dew-margin")).isInstanceOf(Missing.class);
  }

  @Test
  void a_card_is_hidden_by_the_first_coat_after_which_no_square_is_seen() {
    panel.put("squares-seen.c1", "8").put("squares-seen.c2", "2").put("squares-seen.c3", "0");
    assertThat(value("coats-to-hiding")).isEqualTo(3);
    assertThat(conformance("coats-to-hiding", 1, 3)).isEqualTo(1);
    assertThat(conformance("coats-to-hiding", 1, 2)).isZero();
  }

  @Test
  void a_card_that_still_shows_needs_more_coats_than_it_got() {
    panel.put("squares-seen.c1", "8").put("squares-seen.c2", "2");
    assertThat(conformance("coats-to-hiding", 1, 2)).isZero();
    assertThat(conformance("coats-to-hiding", 1, 4)).isEqualTo(0.5);
  }

  @Test
  void a_meter_goes_before_the_eye() {
    panel.put("squares-seen.c1", "8").put("squares-seen.c2", "2").put("squares-seen.c3", "0");
    panel.put("luminance-black.c1", "60 %").put("luminance-white.c1", "80 %");
    panel.put("luminance-black.c2", "79 %").put("luminance-white.c2", "80 %");
    // contrast 0.75 after one coat, 0.9875 after two: 0.98 is crossed between them
    assertThat(value("coats-to-hiding")).isStrictlyBetween(1.0, 2.0);
    assertThat(conformance("coats-to-hiding", 1, 2)).isGreaterThan(0.8);
  }

  /** The primer ends 150 mm from the lower and upper edge, 250 mm from the sides. */
  @Test
  void the_room_of_a_blend_is_what_its_last_coat_leaves_to_the_nearest_edge() {
    panel.put("step-out.c2", "50").put("step-out.c3", "110");
    assertThat(value("blend-room")).isCloseTo(0.04, within(1e-9));
  }

  @Test
  void each_coat_of_a_blend_is_held_against_the_one_before() {
    panel.put("step-out.c1", "0").put("step-out.c2", "60").put("step-out.c3", "55");
    List<Value> steps = ((Values) panel.measure("step-out-order")).values();
    assertThat(steps.get(0).estimate().value()).isCloseTo(0.06, within(1e-12));
    assertThat(steps.get(1).estimate().value()).isCloseTo(-0.005, within(1e-12));
    assertThat(steps.get(1).estimate().standardUncertainty())
        .isCloseTo(0.003 * Math.sqrt(2), within(1e-12));
  }

  @Test
  void the_largest_sanding_step_is_counted_in_numbers_of_the_scale() {
    panel.put("grit.s1", "P240").put("grit.s2", "P400").put("grit.s3", "P600");
    assertThat(value("grit-step")).isEqualTo(200);
    assertThat(value("final-grit")).isEqualTo(600);
    panel.put("grit.s2", "P600");
    assertThat(value("grit-step")).isEqualTo(360);
  }

  @Test
  void one_paper_is_no_step() {
    panel.put("grit.s1", "P600");
    assertThat(value("grit-step")).isZero();
  }

  @Test
  void what_was_not_written_down_is_missing_for_every_quantity() {
    for (String id : PanelQuantities.ids()) {
      assertThat(panel.measure(id)).as(id).isInstanceOf(Missing.class);
    }
  }
}
