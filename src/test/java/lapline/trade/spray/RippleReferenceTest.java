package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class RippleReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "ripple.csv", useHeadersInDisplayName = true)
  void ripple_agrees_with_the_computed_table(
      double beta,
      double overlap,
      double meanOverPeak,
      double variation,
      double evenness,
      double leastOverPeak,
      double mostOverPeak) {
    FanProfile profile = FanProfile.beta(beta);
    Ripple ripple = Ripple.ofEvenPasses(profile, overlap);

    assertThat(ripple.mean() / profile.peak()).isCloseTo(meanOverPeak, within(1e-5));
    assertThat(ripple.variation()).isCloseTo(variation, within(1e-5));
    // thinnest over thickest is printed to four digits
    assertThat(ripple.evenness()).isCloseTo(evenness, within(1e-4));
    assertThat(ripple.least() / profile.peak()).isCloseTo(leastOverPeak, within(1e-4));
    assertThat(ripple.most() / profile.peak()).isCloseTo(mostOverPeak, within(1e-4));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "ripple-exact.csv", useHeadersInDisplayName = true)
  void parabolic_passes_have_their_exact_ripple(
      String name, double overlap, double meanOverPeak, double variationSquared) {
    FanProfile profile = FanProfile.parabola();
    Ripple ripple = Ripple.ofEvenPasses(profile, overlap);

    assertThat(ripple.mean() / profile.peak()).isCloseTo(meanOverPeak, within(1e-9));
    assertThat(Math.pow(ripple.variation(), 2)).isCloseTo(variationSquared, within(1e-9));
  }

  @Test
  void half_overlap_of_parabolas_leaves_valleys_at_two_thirds_of_the_ridges() {
    assertThat(Ripple.ofEvenPasses(FanProfile.parabola(), 0.5).evenness())
        .isCloseTo(2 / 3.0, within(1e-9));
  }

  /**
   * Published: parabolic spot of radius 50 mm, 0.1 (R² − r²) µm/s with r in mm, 50 µm wanted: 39.2
   * mm overlap at 323.3 mm/s (Chen, Sheng, Xi, Song, Chen, ICRA 2002; from memory). Its extremes,
   * 47.74 to 51.66 µm, are computed from the formula.
   */
  @Test
  void a_parabolic_spot_gives_the_published_overlap_and_speed() {
    FanProfile stroke = FanProfile.beta(2.5);
    double overlap = 39.2 / 100;
    Ripple best = Ripple.ofEvenPasses(stroke, overlap);

    assertThat(best.variation())
        .isLessThan(Ripple.ofEvenPasses(stroke, overlap - 0.01).variation())
        .isLessThan(Ripple.ofEvenPasses(stroke, overlap + 0.01).variation());
    assertThat(50 * best.least() / best.mean()).isCloseTo(47.74, within(0.1));
    assertThat(50 * best.most() / best.mean()).isCloseTo(51.66, within(0.1));
    // all the spot gives in a second, πkR⁴/2 in µm·mm², spread over 60.8 mm of spacing
    double speed = Math.PI * 0.1 * Math.pow(50, 4) / (2 * 50 * 60.8);
    assertThat(speed).isCloseTo(323.3, within(0.5));
  }
}
