package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
