package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The seed is the test's argument. */
class ColourProperties {
  private static final int PANELS = 20_000;

  static LongStream seeds() {
    return LongStream.range(1, 101);
  }

  static LongStream fewSeeds() {
    return LongStream.range(1, 13);
  }

  private static Lab colour(RandomGenerator chance) {
    return new Lab(
        5 + 90 * chance.nextDouble(),
        100 * (chance.nextDouble() - 0.5),
        100 * (chance.nextDouble() - 0.5));
  }

  private static Lab beside(Lab colour, RandomGenerator chance, double by) {
    return new Lab(
        Math.max(0, colour.lightness() + by * chance.nextGaussian()),
        colour.a() + by * chance.nextGaussian(),
        colour.b() + by * chance.nextGaussian());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void tristimulus_values_come_back(long seed) {
    RandomGenerator chance = new Random(seed);
    Xyz xyz =
        new Xyz(120 * chance.nextDouble(), 120 * chance.nextDouble(), 120 * chance.nextDouble());

    Xyz back = Lab.of(xyz, White.D65_10).toXyz(White.D65_10);

    assertThat(back.x()).isCloseTo(xyz.x(), within(1e-10));
    assertThat(back.y()).isCloseTo(xyz.y(), within(1e-10));
    assertThat(back.z()).isCloseTo(xyz.z(), within(1e-10));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_colour_differs_from_itself_by_nothing_and_by_more_the_farther_it_goes(long seed) {
    RandomGenerator chance = new Random(seed);
    Lab colour = colour(chance);
    double before = Ciede2000.of(colour, colour);

    assertThat(before).isZero();
    assertThat(Cmc.SEEN.of(colour, colour)).isZero();
    for (double step = 0.5; step < 5; step += 0.5) {
      double now = Ciede2000.of(colour, new Lab(colour.lightness() + step, colour.a(), colour.b()));
      assertThat(now).isGreaterThan(before);
      before = now;
    }
  }

  /** Against what 20,000 re-readings of two truly different colours would find. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("fewSeeds")
  void sureness_of_a_difference_is_what_simulation_finds(long seed) {
    RandomGenerator chance = new Random(seed);
    Lab panel = colour(chance);
    Lab card = beside(panel, chance, 0.8);
    ReaderError error =
        new ReaderError(0.1 + 0.3 * chance.nextDouble(), 0.05 + 0.3 * chance.nextDouble());
    double limit = Ciede2000.of(card, panel) * (0.6 + 0.8 * chance.nextDouble());

    double sure = DifferenceSureness.of(Ciede2000.between(card, panel), error).within(limit);

    int within = 0;
    for (int i = 0; i < PANELS; i++) {
      within += Ciede2000.of(read(card, error, chance), panel) <= limit ? 1 : 0;
    }
    // three standard deviations of so many draws, and what holding the weights still costs
    assertThat(sure).isCloseTo((double) within / PANELS, within(0.011 + 0.006));
  }

  private static Lab read(Lab truth, ReaderError error, RandomGenerator chance) {
    return new Lab(
        truth.lightness() + error.lightness() * chance.nextGaussian(),
        truth.a() + error.colour() * chance.nextGaussian(),
        truth.b() + error.colour() * chance.nextGaussian());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void sureness_grows_with_the_limit_and_ends_at_certainty(long seed) {
    RandomGenerator chance = new Random(seed);
    Lab panel = colour(chance);
    Lab card = beside(panel, chance, 1);
    DifferenceSureness sureness =
        DifferenceSureness.of(Ciede2000.between(card, panel), new ReaderError(0.2, 0.1));
    double before = 0;

    for (double limit = 0.1; limit < 12; limit *= 1.3) {
      double now = sureness.within(limit);
      assertThat(now).isGreaterThanOrEqualTo(before - 1e-7);
      before = now;
    }
    assertThat(sureness.within(20)).isCloseTo(1, within(1e-6));
  }

  /** A move's amount ± 2 u holds the true step of the face, read at two angles. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("threeSeeds")
  void a_move_lies_in_its_interval_as_often_as_it_says(long seed) {
    RandomGenerator chance = new Random(seed);
    ReaderError one = new ReaderError(0.3, 0.2);
    Lab card = new Lab(80, 5, -10);
    Lab panel = new Lab(84, 5, -10);
    int held = 0;

    for (int i = 0; i < PANELS; i++) {
      AngleSet cardRead = face(read(card, one, chance), read(card, one, chance));
      AngleSet panelRead = face(read(panel, one, chance), read(panel, one, chance));
      ColourMove lighter =
          ColourMove.from(cardRead, panelRead, one.and(one)).stream()
              .filter(m -> m.direction() == ColourMove.Direction.LIGHTER)
              .findFirst()
              .orElseThrow();
      held += Math.abs(lighter.amount() - 4) <= 2 * lighter.uncertainty() ? 1 : 0;
    }

    assertThat((double) held / PANELS).isBetween(0.94, 0.96);
  }

  static LongStream threeSeeds() {
    return LongStream.range(1, 4);
  }

  private static AngleSet face(Lab at15, Lab at25) {
    return new AngleSet(White.D65_10, Map.of(AspecularAngle.A15, at15, AspecularAngle.A25, at25));
  }
}
