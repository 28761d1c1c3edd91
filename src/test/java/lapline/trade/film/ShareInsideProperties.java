package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import lapline.Samples;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.ToleranceFactor;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The stated interval holds the true share as often as it says. */
class ShareInsideProperties {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int PANELS = 20_000;
  private static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);

  private static double truth(double mean, double spread, TargetRange range) {
    return NORMAL.cumulativeProbability((range.most() - mean) / spread)
        - NORMAL.cumulativeProbability((range.least() - mean) / spread);
  }

  private static FilmReadings readings(Random chance, int count, double mean, double spread) {
    return new FilmReadings(
        DoubleStream.generate(() -> mean + spread * chance.nextGaussian())
            .limit(count)
            .boxed()
            .toList());
  }

  /** The true share lies in the interval where its confidence lies between 2.5 and 97.5 %. */
  private static double held(int count, double mean, double spread, TargetRange range) {
    Random chance = new Random(1);
    double truth = truth(mean, spread, range);
    int held = 0;
    for (int i = 0; i < PANELS; i++) {
      ShareInside share = ShareInside.of(readings(chance, count, mean, spread), range);
      double sure = share.confidenceOfAtLeast(truth);
      held += sure >= 0.025 && sure <= 0.975 ? 1 : 0;
    }
    return held / (double) PANELS;
  }

  /** Films far wider than the range, and almost all inside; in the middle and off it. */
  @ParameterizedTest
  @CsvSource({
    "3, 57.5, 2",
    "3, 57.5, 3",
    "3, 57.5, 9",
    "3, 53, 4",
    "4, 57.5, 9",
    "4, 53, 3",
    "5, 57.5, 2",
    "5, 57.5, 6",
    "5, 57.5, 9",
    "5, 57.5, 12",
    "7, 57.5, 12",
    "10, 53, 4",
    "15, 57.5, 3"
  })
  void an_interval_of_95_per_cent_holds_the_true_share_94_to_96_times_in_100(
      int count, double mean, double spread) {
    assertThat(held(count, mean * 1e-6, spread * 1e-6, CLEAR)).isBetween(0.94, 0.96);
  }

  @ParameterizedTest
  @CsvSource({"3, 55, 4", "12, 53, 3"})
  void so_it_does_with_one_limit_alone(int count, double mean, double spread) {
    assertThat(held(count, mean * 1e-6, spread * 1e-6, TargetRange.atLeast(50e-6)))
        .isBetween(0.94, 0.96);
    assertThat(held(count, mean * 1e-6, spread * 1e-6, TargetRange.atMost(58e-6)))
        .isBetween(0.94, 0.96);
  }

  /** Mean − k s on the limit is what the one-sided tolerance factor (NIST 7.2.6.3) stands for. */
  @ParameterizedTest
  @CsvSource({"5, 0.9, 0.95", "10, 0.95, 0.95", "15, 0.9, 0.99", "43, 0.9, 0.99"})
  void one_limit_agrees_with_the_exact_tolerance_factor(int count, double share, double sure) {
    FilmReadings readings = readings(new Random(7), count, 57e-6, 3e-6);
    double k = ToleranceFactor.oneSided(count, share, sure);
    TargetRange range = TargetRange.atLeast(readings.mean() - k * readings.spread());

    assertThat(ShareInside.of(readings, range).confidenceOfAtLeast(share))
        .isCloseTo(sure, within(1e-3));
  }

  @Test
  void the_interval_has_the_confidence_that_it_was_asked_for() {
    Samples.each(
        30,
        chance -> {
          int count = 5 + chance.nextInt(20);
          double mean = 48e-6 + 18e-6 * chance.nextDouble();
          FilmReadings readings = readings(new Random(chance.nextLong()), count, mean, 4e-6);
          ShareInside share = ShareInside.of(readings, CLEAR);
          ShareInside.Interval interval = share.interval(0.9);
          assertThat(share.best()).isBetween(interval.least(), interval.most());
          assertThat(share.confidenceOfAtLeast(interval.least())).isCloseTo(0.95, within(1e-4));
          assertThat(share.confidenceOfAtLeast(interval.most())).isCloseTo(0.05, within(1e-4));
          assertThat(share.interval(0.99).least()).isLessThan(interval.least());
        });
  }

  @Test
  void a_higher_share_is_never_surer_and_a_wider_range_never_holds_less() {
    Samples.each(
        30,
        chance -> {
          FilmReadings readings = readings(new Random(chance.nextLong()), 8, 56e-6, 4e-6);
          ShareInside share = ShareInside.of(readings, CLEAR);
          double low = 0.05 + 0.8 * chance.nextDouble();
          double high = low + (0.99 - low) * chance.nextDouble();
          TargetRange wide = new TargetRange(48e-6, 67e-6);
          assertThat(share.confidenceOfAtLeast(high))
              .isLessThanOrEqualTo(share.confidenceOfAtLeast(low) + 1e-6);
          assertThat(ShareInside.of(readings, wide).best()).isGreaterThanOrEqualTo(share.best());
        });
  }

  @Test
  void a_range_far_wider_than_the_film_is_one_limit_after_the_other() {
    FilmReadings readings = readings(new Random(3), 12, 53e-6, 2e-6);
    TargetRange wide = new TargetRange(50e-6, 200e-6);

    assertThat(ShareInside.of(readings, wide).confidenceOfAtLeast(0.9))
        .isCloseTo(
            ShareInside.of(readings, TargetRange.atLeast(50e-6)).confidenceOfAtLeast(0.9),
            within(2e-3));
  }

  /** Exact, from the binomial: what the class comment says of counting. */
  @Test
  void a_count_of_ten_readings_holds_a_share_of_95_per_cent_more_often_than_it_says() {
    BinomialDistribution inside = BinomialDistribution.of(10, 0.95);
    double held = 0;
    for (int k = 0; k <= 10; k++) {
      double least =
          k == 0 ? 0 : BetaDistribution.of(k, 11.0 - k).inverseCumulativeProbability(0.025);
      double most =
          k == 10 ? 1 : BetaDistribution.of(k + 1.0, 10.0 - k).inverseCumulativeProbability(0.975);
      held += least <= 0.95 && 0.95 <= most ? inside.probability(k) : 0;
    }
    assertThat(held).isCloseTo(0.988, within(5e-4));
  }

  /** One standard deviation either way holds 68.27 % of a normal film (handbook tables). */
  @Test
  void one_spread_either_way_holds_two_thirds() {
    FilmReadings readings = new FilmReadings(List.of(54e-6, 55e-6, 56e-6));
    ShareInside share = ShareInside.of(readings, new TargetRange(54e-6, 56e-6));

    assertThat(share.best()).isCloseTo(0.6827, within(5e-5));
  }
}
