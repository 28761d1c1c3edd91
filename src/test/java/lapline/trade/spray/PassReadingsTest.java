package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;

class PassReadingsTest {

  @Test
  void overlap_carries_the_uncertainty_of_spacing_and_fan() {
    Estimate overlap = Overlap.of(Estimate.of(0.060, 0.003), Estimate.of(0.200, 0.005));

    assertThat(overlap.value()).isCloseTo(0.70, within(1e-12));
    // 0.003/0.2 = 0.015 and 0.06·0.005/0.04 = 0.0075 in quadrature
    assertThat(overlap.standardUncertainty()).isCloseTo(0.016771, within(1e-6));
  }

  @Test
  void passes_further_apart_than_the_fan_is_wide_overlap_by_less_than_nothing() {
    assertThat(Overlap.of(Estimate.of(0.25, 0), Estimate.of(0.2, 0)).value())
        .isCloseTo(-0.25, within(1e-12));
  }

  @Test
  void a_fan_without_width_is_refused() {
    assertThatThrownBy(() -> Overlap.of(Estimate.of(0.1, 0), Estimate.of(0, 0)))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("fanWidth");
  }

  @Test
  void speed_is_length_over_time() {
    Estimate speed = StrokeSpeed.of(Estimate.of(0.9, 0.01), Estimate.of(2.0, 0.1));

    assertThat(speed.value()).isCloseTo(0.45, within(1e-12));
    assertThat(speed.standardUncertainty()).isCloseTo(Math.hypot(0.005, 0.0225), within(1e-12));
  }

  @Test
  void few_degrees_of_freedom_in_the_larger_part_stay_few() {
    Estimate time = new Estimate(2.0, 0.1, 4);

    assertThat(StrokeSpeed.of(Estimate.of(0.9, 0), time).degreesOfFreedom())
        .isCloseTo(4, within(1e-9));
  }

  @Test
  void drift_is_told_from_bow() {
    GunDistance away =
        GunDistance.along(Estimate.of(.15, .005), Estimate.of(.16, .005), Estimate.of(.17, .005));
    GunDistance arc =
        GunDistance.along(Estimate.of(.17, .005), Estimate.of(.15, .005), Estimate.of(.17, .005));

    assertThat(away.mean().value()).isCloseTo(0.16, within(1e-12));
    assertThat(away.mean().standardUncertainty()).isCloseTo(0.005 / Math.sqrt(3), within(1e-12));
    assertThat(away.drift().value()).isCloseTo(0.02, within(1e-12));
    assertThat(away.bow().value()).isCloseTo(0, within(1e-12));
    assertThat(arc.drift().value()).isCloseTo(0, within(1e-12));
    assertThat(arc.bow().value()).isCloseTo(0.02, within(1e-12));
  }

  @Test
  void a_late_trigger_wastes_paint() {
    assertThat(Trigger.usefulShare(0.9, 0.05, 0.05)).isCloseTo(0.90, within(1e-12));
    assertThat(Trigger.usefulShare(0.9, 0.15, 0.15)).isCloseTo(0.75, within(1e-12));
  }

  @Test
  void a_measured_profile_runs_straight_between_its_readings() {
    FanProfile profile = FanProfile.measured(List.of(0.0, 10.0, 10.0, 0.0));

    assertThat(profile.peak()).isCloseTo(1.5, within(1e-12));
    assertThat(profile.at(-2 / 3.0)).isCloseTo(0.75, within(1e-12));
    assertThat(profile.at(1.01)).isZero();
  }

  @Test
  void even_bands_that_touch_leave_no_ripple() {
    Ripple ripple = Ripple.ofEvenPasses(FanProfile.uniform(), 0);

    assertThat(ripple.variation()).isCloseTo(0, within(1e-6));
    assertThat(ripple.most()).isCloseTo(1, within(1e-9));
  }

  @Test
  void a_single_stroke_leaves_the_lower_edge_thin() {
    CoatField coat =
        CoatField.evenlySpaced(Pass.steady(0.1, 0.2, 20e-6, FanProfile.parabola()), 0.06, 5);

    assertThat(coat.filmAt(0.3, 0.01)).isLessThan(0.3 * coat.filmAt(0.3, 0.22));
    assertThat(coat.then(coat).filmAt(0.3, 0.2))
        .isCloseTo(2 * coat.filmAt(0.3, 0.2), within(1e-18));
  }
}
