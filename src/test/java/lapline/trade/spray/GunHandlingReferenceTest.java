package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GunHandlingReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "arcing.csv", useHeadersInDisplayName = true)
  void an_arc_thins_the_film_by_the_cube_of_the_cosine(
      double degrees, double cos, double cos2, double cos3) {
    double reach = 0.2;
    double x = 0.3 + reach * Math.tan(Math.toRadians(degrees));
    Stroke arc = Stroke.arcing(0.3, reach);
    Pass pass = Pass.steady(0, 0.25, 20e-6, FanProfile.parabola()).by(arc);

    assertThat(1 / arc.distance(x)).isCloseTo(cos, within(5.1e-6));
    assertThat(arc.deposit(x)).isCloseTo(cos2, within(5.1e-6));
    assertThat(pass.filmAt(x, 0) / pass.filmAt(0.3, 0)).isCloseTo(cos3, within(5.1e-6));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "heel.csv", useHeadersInDisplayName = true)
  void a_heeled_gun_starves_the_far_end_of_its_fan(
      double tilt, double farEnd, double nearEnd, double ratio, double halfFan) {
    Heel heel = new Heel(Math.toRadians(tilt), Math.toRadians(halfFan));

    assertThat(heel.farEnd()).isCloseTo(farEnd, within(5.1e-6));
    assertThat(heel.nearEnd()).isCloseTo(nearEnd, within(5.1e-6));
    assertThat(heel.farEnd() / heel.nearEnd()).isCloseTo(ratio, within(5.1e-6));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "mass-balance.csv", useHeadersInDisplayName = true)
  void the_mean_film_follows_from_the_paint_that_leaves_the_gun(
      double millilitresPerMinute,
      double transferEfficiency,
      double volumeSolids,
      double width,
      double speed,
      double overlap,
      double dry,
      double wet,
      double strokePeak) {
    MassBalance balance =
        new MassBalance(millilitresPerMinute * 1e-6 / 60, transferEfficiency, volumeSolids);
    double spacing = Overlap.spacing(overlap, width);

    assertThat(balance.meanDryFilm(speed, spacing) * 1e6).isCloseTo(dry, within(1e-4));
    assertThat(balance.meanWetFilm(speed, spacing) * 1e6).isCloseTo(wet, within(1e-4));
    assertThat(balance.strokeDryFilm(speed, width) * FanProfile.parabola().peak() * 1e6)
        .isCloseTo(strokePeak, within(1e-4));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "fan.csv", useHeadersInDisplayName = true)
  void a_fan_widens_and_thins_with_distance(
      double distance, Double fullAngle, double strokePeak, double spotPeak) {
    Fan fan = new Fan(0.25, 0.2);

    assertThat(fan.strokePeakAt(distance / 1000)).isCloseTo(strokePeak, within(1e-4));
    assertThat(fan.spotPeakAt(distance / 1000)).isCloseTo(spotPeak, within(1e-4));
    if (fullAngle != null) {
      double angle = 2 * new Fan(0.25, distance / 1000).halfAngle();
      assertThat(Math.toDegrees(angle)).isCloseTo(fullAngle, within(1e-3));
    }
  }
}
