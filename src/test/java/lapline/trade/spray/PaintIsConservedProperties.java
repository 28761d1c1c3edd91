package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No profile, tilt or distance makes or loses paint; the seed is the test's argument. */
class PaintIsConservedProperties {

  static LongStream seeds() {
    return LongStream.range(1, 41);
  }

  private static FanProfile profile(RandomGenerator chance) {
    return switch (chance.nextInt(3)) {
      case 0 -> FanProfile.beta(1.5 + 3 * chance.nextDouble());
      case 1 -> FanProfile.measured(chance.doubles(7, 0.1, 1).boxed().toList());
      default ->
          new HeeledProfile(
              FanProfile.beta(2 + chance.nextDouble()),
              new Heel(0.4 * chance.nextDouble() - 0.2, 0.3 + 0.3 * chance.nextDouble()));
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_mean_over_many_passes_is_one_stroke_over_what_is_not_overlapped(long seed) {
    RandomGenerator chance = new Random(seed);
    double overlap = 0.9 * chance.nextDouble();

    assertThat(Ripple.ofEvenPasses(profile(chance), overlap).mean() * (1 - overlap))
        .isCloseTo(1, within(2e-3));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void across_any_pass_lies_its_mean_film_times_its_width(long seed) {
    RandomGenerator chance = new Random(seed);
    Stroke drift = Stroke.drifting(0, 1, 1, 1.5);
    Pass pass =
        Pass.steady(0.2, 0.25, 15e-6, profile(chance))
            .by(drift)
            .heeled(new Heel(0.2 * chance.nextDouble(), 0.5));

    Ripple across = new CoatField(List.of(pass)).over(0.59, -0.5, 0.61, 1, 1, 1000);

    assertThat(across.mean() * 1.5).isCloseTo(15e-6 * 0.25, within(15e-6 * 0.25 * 5e-3));
  }
}
