package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AreaShareReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "tolerance-factors.csv", useHeadersInDisplayName = true)
  void a_one_sided_tolerance_limit_leaves_its_share_with_its_confidence(
      int n, double share, double confidence, double factor) {
    FilmReadings readings = evenly(n);
    TargetRange range = TargetRange.atLeast(readings.mean() - factor * readings.spread());

    assertThat(AreaShare.of(readings, range, GaugeError.unknown()).probabilityAtLeast(share))
        .isCloseTo(confidence, within(0.003));
  }

  private static FilmReadings evenly(int n) {
    return new FilmReadings(IntStream.range(0, n).mapToObj(i -> 50e-6 + i * 1e-6).toList());
  }
}
