package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The seed is the test's argument. */
class AreaShareProperties {
  private static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);

  static LongStream seeds() {
    return LongStream.range(1, 31);
  }

  private static FilmReadings readings(RandomGenerator chance, double mean, double spread) {
    return new FilmReadings(
        chance.doubles(12).map(d -> mean + spread * chance.nextGaussian()).boxed().toList());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_wider_range_holds_no_less_of_the_panel(long seed) {
    RandomGenerator chance = new Random(seed);
    FilmReadings readings = readings(chance, 55e-6, 5e-6 * chance.nextDouble());
    TargetRange wider = new TargetRange(48e-6, 66e-6);
    GaugeError gauge = new GaugeError(1e-6, 0.5e-6);

    AreaShare narrow = AreaShare.of(readings, CLEAR, gauge);
    assertThat(AreaShare.of(readings, wider, gauge).best()).isGreaterThanOrEqualTo(narrow.best());
    assertThat(narrow.low()).isBetween(0.0, narrow.best());
    assertThat(narrow.high()).isBetween(narrow.best(), 1.0);
  }

  /** 95 % intervals from 400 invented panels hold the true share about 95 times in a hundred. */
  @Test
  void the_interval_holds_the_true_share_as_often_as_it_says() {
    long seed = 20261125;
    RandomGenerator chance = new Random(seed);
    int panels = 400;
    int held = 0;
    for (int i = 0; i < panels; i++) {
      AreaShare share = AreaShare.of(readings(chance, 54e-6, 4e-6), CLEAR, GaugeError.unknown());
      double truth = 0.838363; // Φ(2.75) − Φ(−1), film 54 ± 4 µm
      held += truth >= share.low() && truth <= share.high() ? 1 : 0;
    }
    assertThat(held / (double) panels).as("seed %d", seed).isBetween(0.91, 0.985);
  }
}
