package lapline.trade.hiding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The seed is the test's argument. */
class KubelkaMunkProperties {

  static LongStream seeds() {
    return LongStream.range(1, 101);
  }

  private static KubelkaMunk paint(RandomGenerator chance) {
    return new KubelkaMunk(chance.nextInt(10) == 0 ? 1 : 0.05 + 0.94 * chance.nextDouble());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_a_backing_adds_went_through_the_film_twice(long seed) {
    RandomGenerator chance = new Random(seed);
    KubelkaMunk paint = paint(chance);
    double sx = 5 * chance.nextDouble();
    double backing = chance.nextDouble();
    double through = paint.transmittance(sx);
    double black = paint.overBlack(sx);

    assertThat(paint.over(backing, sx))
        .isCloseTo(black + backing * through * through / (1 - backing * black), within(1e-10));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void two_coats_are_one_coat_over_the_other(long seed) {
    RandomGenerator chance = new Random(seed);
    KubelkaMunk paint = paint(chance);
    double first = 3 * chance.nextDouble();
    double second = 3 * chance.nextDouble();

    assertThat(paint.over(paint.overBlack(first), second))
        .isCloseTo(paint.overBlack(first + second), within(1e-10));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_pair_of_readings_gives_the_paint_and_its_film_back(long seed) {
    RandomGenerator chance = new Random(seed);
    KubelkaMunk paint = new KubelkaMunk(0.1 + 0.8 * chance.nextDouble());
    double sx = 0.3 + chance.nextDouble();
    double black = paint.overBlack(sx);

    KubelkaMunk found = KubelkaMunk.ofPair(black, paint.over(0.8, sx), 0.8);
    assertThat(found.reflectivity()).isCloseTo(paint.reflectivity(), within(1e-8));
    assertThat(found.sxFrom(black)).isCloseTo(sx, within(1e-6));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_crossing_between_coats_lies_near_the_closed_forms(long seed) {
    RandomGenerator chance = new Random(seed);
    KubelkaMunk paint = new KubelkaMunk(0.1 + 0.8 * chance.nextDouble());
    double atHiding = paint.sxAtContrast(ContrastRatio.HIDING, 0.8);
    double coats = 1.5 + 4 * chance.nextDouble();
    List<Estimate> contrast = new ArrayList<>();
    for (int coat = 1; coat <= 6; coat++) {
      contrast.add(Estimate.of(paint.contrast(0.8, coat * atHiding / coats), 0.002));
    }
    CoatsToHiding found = ContrastByCoat.coatsToHiding(contrast);

    assertThat(found).isInstanceOf(CoatsToHiding.Crossed.class);
    assertThat(((CoatsToHiding.Crossed) found).at())
        .isCloseTo(coats, within(coats < 4 ? 0.1 : 0.03));
  }
}
