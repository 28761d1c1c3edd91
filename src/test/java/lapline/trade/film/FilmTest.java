package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class FilmTest {
  private static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);

  @Test
  void build_is_after_less_before_with_both_uncertainties() {
    Estimate build = FilmBuild.of(Estimate.of(110e-6, 3e-6), Estimate.of(168e-6, 4e-6));

    assertThat(build.value()).isCloseTo(58e-6, within(1e-15));
    assertThat(build.standardUncertainty()).isCloseTo(5e-6, within(1e-15));
  }

  @Test
  void an_offset_the_gauge_kept_cancels() {
    Estimate build = FilmBuild.of(Estimate.of(110e-6, 2e-6), Estimate.of(168e-6, 2e-6), 1);

    assertThat(build.standardUncertainty()).isCloseTo(0, within(1e-12));
  }

  @Test
  void a_build_a_little_below_nothing_is_possible_and_far_below_is_not() {
    assertThat(FilmBuild.isPossible(Estimate.of(-2e-6, 1e-6))).isTrue();
    assertThat(FilmBuild.isPossible(Estimate.of(-4e-6, 1e-6))).isFalse();
  }

  @Test
  void wet_film_carries_its_uncertainty_into_dry() {
    Estimate dry = new VolumeSolids(0.4).dryFrom(Estimate.of(100e-6, 10e-6));

    assertThat(dry.value()).isCloseTo(40e-6, within(1e-15));
    assertThat(dry.standardUncertainty()).isCloseTo(4e-6, within(1e-15));
  }

  @Test
  void a_paint_of_more_than_all_solids_is_refused() {
    assertThatThrownBy(() -> new VolumeSolids(1.2))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("volume solids");
  }

  @Test
  void a_mean_well_inside_needs_no_further_reading() {
    assertThat(FurtherReadings.toSettleLikely(58e-6, 2e-6, 8, 0, CLEAR, 0.8, 50)).hasValue(0);
  }

  @Test
  void no_number_of_readings_takes_away_the_gauges_offset() {
    assertThat(FurtherReadings.toSettleLikely(51e-6, 3e-6, 8, 2e-6, CLEAR, 0.5, 50)).isEmpty();
  }
}
