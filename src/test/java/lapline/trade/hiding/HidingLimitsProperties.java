package lapline.trade.hiding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lapline.Samples;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What thin and thick films come to, and how often the stated numbers of coats hold. */
class HidingLimitsProperties {
  private static final int CARDS = 20_000;

  @Test
  void a_thick_film_comes_to_its_reflectivity_and_hides_all() {
    Samples.each(
        200,
        chance -> {
          KubelkaMunk paint = new KubelkaMunk(0.02 + 0.93 * chance.nextDouble());
          double backing = chance.nextDouble();
          for (double sx : new double[] {500, 1e4, 1e9, Double.MAX_VALUE}) {
            assertThat(paint.overBlack(sx)).isCloseTo(paint.reflectivity(), within(1e-9));
            assertThat(paint.over(backing, sx)).isCloseTo(paint.reflectivity(), within(1e-9));
            assertThat(paint.contrast(0.8, sx)).isCloseTo(1, within(1e-9));
            assertThat(paint.transmittance(sx)).isCloseTo(0, within(1e-9));
          }
          assertThat(paint.overBlack(0)).isZero();
          assertThat(paint.over(backing, 0)).isEqualTo(backing);
          assertThat(paint.transmittance(0)).isEqualTo(1);
          assertThat(paint.overBlack(1e-12)).isCloseTo(1e-12, within(1e-20));
        });
  }

  @Test
  void contrast_grows_with_the_film_and_shrinks_with_a_whiter_white() {
    Samples.each(
        200,
        chance -> {
          KubelkaMunk paint = new KubelkaMunk(0.05 + 0.95 * chance.nextDouble());
          double thin = 5 * chance.nextDouble();
          double thick = thin + 2 * chance.nextDouble();
          assertThat(paint.contrast(0.8, thick))
              .isBetween(paint.contrast(0.8, thin) - 1e-12, 1 + 1e-12);
          assertThat(paint.contrast(0.9, thin))
              .isLessThanOrEqualTo(paint.contrast(0.8, thin) + 1e-12);
        });
  }

  private static ContrastCurve read(KubelkaMunk paint, double coats, double u, Random chance) {
    return read(paint, coats, (int) Math.ceil(coats) + 1, u, chance);
  }

  private static ContrastCurve read(
      KubelkaMunk paint, double coats, int lookedAt, double u, Random chance) {
    double perCoat = paint.sxAtContrast(ContrastRatio.HIDING, 0.8) / coats;
    List<Estimate> contrast = new ArrayList<>(List.of(Estimate.of(0, 0)));
    for (int coat = 1; coat <= lookedAt; coat++) {
      double seen = paint.contrast(0.8, coat * perCoat) + u * chance.nextGaussian();
      contrast.add(Estimate.of(Math.max(0, seen), u));
    }
    return new ContrastCurve(contrast, ContrastRatio.HIDING);
  }

  /** The true number lies in the interval where its probability lies between 2.5 and 97.5 %. */
  private static double held(double reflectivity, double coats, double u) {
    Random chance = new Random(1);
    KubelkaMunk paint = new KubelkaMunk(reflectivity);
    int held = 0;
    for (int i = 0; i < CARDS; i++) {
      double hidden = read(paint, coats, u, chance).hiddenBy(coats);
      held += hidden >= 0.025 && hidden <= 0.975 ? 1 : 0;
    }
    return held / (double) CARDS;
  }

  @ParameterizedTest
  @CsvSource({
    "0.2, 1.6, 0.002",
    "0.2, 2.05, 0.002",
    "0.05, 2.15, 0.004",
    "0.2, 3.5, 0.004",
    "0.6, 2.5, 0.002",
    "0.6, 3.9, 0.004",
    "0.6, 3, 0.002",
    "0.85, 5.5, 0.002"
  })
  void the_stated_interval_holds_the_coats_that_truly_hide(
      double reflectivity, double coats, double u) {
    assertThat(held(reflectivity, coats, u)).isBetween(0.94, 0.96);
  }

  /** Readings so unsure that many say more than full hiding: on the safe side. */
  @ParameterizedTest
  @CsvSource({"0.2, 2.5", "0.6, 2.5", "0.85, 2.5"})
  void that_of_unsure_readings_holds_them_up_to_97_times_in_100(double reflectivity, double coats) {
    assertThat(held(reflectivity, coats, 0.008)).isBetween(0.94, 0.97);
  }

  /** However sure the readings are, and however dark the paint. */
  @ParameterizedTest
  @CsvSource({
    "0.2, 0.7, 0.001", "0.85, 0.7, 0.001", "0.85, 0.7, 0.008", "0.6, 0.98, 0.004",
    "0.05, 1.1, 0.001", "0.2, 1.1, 0.002", "0.2, 1.6, 0.001", "0.85, 1.3, 0.001",
    "0.85, 1.6, 0.001", "0.85, 1.9, 0.004"
  })
  void where_one_or_two_coats_hide_the_interval_holds_that_at_least_as_often_as_it_says(
      double reflectivity, double coats, double u) {
    Random chance = new Random(1);
    KubelkaMunk paint = new KubelkaMunk(reflectivity);
    int held = 0;
    for (int i = 0; i < CARDS / 10; i++) {
      ContrastCurve curve = read(paint, coats, u, chance);
      CoatsToHiding.Interval stated = new CoatsToHiding.Crossed(coats, curve).interval(0.95);
      held += stated.least() <= coats && coats <= stated.most() ? 1 : 0;
    }
    assertThat(held / (CARDS / 10.0)).isGreaterThanOrEqualTo(0.95);
  }

  /**
   * What a page shows as 'value ± so much'. More are looked at than hide, just as many, or one too
   * few; what is said of a card that was not reached is that more are needed.
   */
  @ParameterizedTest
  @CsvSource({
    "0.05, 2.1, 3, 0.004", "0.05, 2.5, 3, 0.002", "0.05, 2.5, 2, 0.004", "0.05, 2.9, 3, 0.004",
    "0.05, 3.4, 3, 0.002", "0.05, 3.8, 3, 0.004", "0.05, 3.8, 4, 0.004", "0.05, 4.6, 5, 0.004",
    "0.05, 1.3, 1, 0.002", "0.2, 1.3, 1, 0.004", "0.2, 2.5, 3, 0.002", "0.2, 3.8, 4, 0.008",
    "0.6, 2.5, 2, 0.002", "0.6, 2.5, 3, 0.002", "0.6, 2.9, 2, 0.004", "0.6, 3.1, 2, 0.004",
    "0.6, 3.4, 4, 0.004", "0.6, 3.8, 3, 0.008", "0.85, 1.6, 2, 0.002", "0.85, 4.6, 5, 0.004"
  })
  void the_plus_or_minus_holds_at_least_as_often_as_it_says(
      double reflectivity, double coats, int lookedAt, double u) {
    Random chance = new Random(3);
    KubelkaMunk paint = new KubelkaMunk(reflectivity);
    int held = 0;
    for (int i = 0; i < CARDS / 10; i++) {
      ContrastCurve curve = read(paint, coats, lookedAt, u, chance);
      held += isTrue(ContrastByCoat.coatsToHiding(after(curve)), coats) ? 1 : 0;
    }
    assertThat(held / (CARDS / 10.0)).isGreaterThanOrEqualTo(0.945);
  }

  private static List<Estimate> after(ContrastCurve curve) {
    return curve.contrast().subList(1, curve.contrast().size());
  }

  private static boolean isTrue(CoatsToHiding said, double coats) {
    return said instanceof CoatsToHiding.Crossed crossed
        ? Math.abs(crossed.at() - coats) <= crossed.film().expandedUncertainty() + 1e-6
        : said.probabilityWithin(TargetRange.atMost(Math.ceil(coats))).orElse(0.5) > 0.0228
            || coats > ((CoatsToHiding.NotReached) said).coats();
  }

  /** 1.6 coats, and after two coats it hides for sure. */
  @Test
  void within_the_second_coat_no_part_is_told() {
    ContrastCurve curve = read(new KubelkaMunk(0.6), 1.6, 0.001, new Random(1));
    CoatsToHiding.Interval stated = new CoatsToHiding.Crossed(1.6, curve).interval(0.95);

    assertThat(stated).isEqualTo(new CoatsToHiding.Interval(1, 2));
  }

  @Test
  void the_interval_is_read_from_the_same_probabilities() {
    Samples.each(
        50,
        chance -> {
          KubelkaMunk paint = new KubelkaMunk(0.2 + 0.6 * chance.nextDouble());
          double coats = 2.2 + 3 * chance.nextDouble();
          ContrastCurve curve = read(paint, coats, 0.003, new Random(chance.nextLong()));
          CoatsToHiding found = ContrastByCoat.coatsToHiding(after(curve));
          CoatsToHiding.Interval interval = ((CoatsToHiding.Crossed) found).interval(0.9);
          assertThat(interval.least()).isLessThan(interval.most());
          assertThat(curve.hiddenBy(interval.least() + 1e-6)).isGreaterThanOrEqualTo(0.0499);
          double told = Math.min(interval.most(), curve.last());
          assertThat(curve.hiddenBy(told - 1e-6)).isLessThanOrEqualTo(0.9501);
        });
  }

  @Test
  void more_coats_never_hide_less_surely_and_all_numbers_of_coats_add_up() {
    Samples.each(
        50,
        chance -> {
          KubelkaMunk paint = new KubelkaMunk(0.2 + 0.6 * chance.nextDouble());
          ContrastCurve curve =
              read(paint, 1.5 + 3 * chance.nextDouble(), 0.003, new Random(chance.nextLong()));
          CoatsToHiding found = ContrastByCoat.coatsToHiding(after(curve));
          double sum = 0;
          double before = 0;
          for (int n = 1; n <= 12; n++) {
            double hidden = curve.hiddenBy(n);
            assertThat(hidden).isGreaterThanOrEqualTo(before - 1e-9);
            before = hidden;
            sum += found.probabilityWithin(new TargetRange(n, n)).getAsDouble();
          }
          assertThat(sum).isCloseTo(before, within(1e-9));
        });
  }

  @Test
  void a_card_that_shows_again_was_not_surely_hidden() {
    ContrastCurve curve =
        new ContrastCurve(
            List.of(
                Estimate.of(0, 0),
                Estimate.of(0.99, 0.003),
                Estimate.of(0.97, 0.003),
                Estimate.of(0.995, 0.003)),
            0.98);

    assertThat(curve.hiddenBy(1)).isLessThan(0.01);
    assertThat(curve.hiddenBy(3)).isGreaterThan(0.99);
  }
}
