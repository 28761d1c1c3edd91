package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import lapline.Samples;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How often the truth lies in the intervals that are stated, over 20,000 simulations: between 94
 * and 96 % for 95 or 95.45 % stated. The interval of an {@link Estimate} is its value ± coverage
 * factor × standard uncertainty, as {@link QuantityWriter} writes it.
 */
class CoverageProperties {
  private static final int DRAWS = 20_000;

  /** One simulated measurement: whether its interval holds the truth. */
  private interface Trial {
    boolean holds(RandomGenerator chance);
  }

  private static void covered(Trial trial) {
    covered(trial, 0.96);
  }

  private static void covered(Trial trial, double most) {
    covered(trial, 0.94, most);
  }

  private static void covered(Trial trial, double least, double most) {
    Samples.each(
        3,
        chance -> {
          int held = 0;
          for (int i = 0; i < DRAWS; i++) {
            held += trial.holds(chance) ? 1 : 0;
          }
          assertThat(held / (double) DRAWS).isBetween(least, most);
        });
  }

  private static boolean covers(Estimate e, double truth) {
    double reach = Gum.coverageFactor(e.degreesOfFreedom()) * e.standardUncertainty();
    return Math.abs(e.value() - truth) <= reach;
  }

  private static double[] readings(int n, double spread, double shift, RandomGenerator chance) {
    double[] values = new double[n];
    Arrays.setAll(values, i -> 60 + shift + spread * chance.nextGaussian());
    return values;
  }

  private static Estimate drawn(double truth, double u, RandomGenerator chance) {
    return Estimate.of(truth + u * chance.nextGaussian(), u);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 5, 10, 30})
  void the_mean_of_few_readings_lies_in_its_interval(int n) {
    covered(chance -> covers(Gum.mean(readings(n, 2, 0, chance), 0), 60));
  }

  /** The instrument's error is one for all readings of a panel, drawn anew for each panel. */
  @ParameterizedTest
  @CsvSource({"5, 1.5", "5, 0.8", "10, 1", "3, 3"})
  void the_mean_of_readings_by_a_gauge_with_an_error_lies_in_its_interval(int n, double gauge) {
    covered(
        chance ->
            covers(Gum.mean(readings(n, 2, gauge * chance.nextGaussian(), chance), gauge), 60));
  }

  /** Three and four readings, the gauge from of no matter to all that matters. */
  @ParameterizedTest
  @CsvSource({
    "3, 0.2", "3, 0.5", "3, 1.2", "3, 4",
    "4, 0.2", "4, 0.5", "4, 1.2", "4, 4",
    "5, 0.5"
  })
  void so_does_that_of_the_fewest_whatever_gauge_they_were_read_with(int n, double gauge) {
    covered(
        chance ->
            covers(Gum.mean(readings(n, 2, gauge * chance.nextGaussian(), chance), gauge), 60));
  }

  /** No rule for two was found that keeps to 96 % without falling below 94 elsewhere. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.5, 0.8, 1.2, 2, 5})
  void that_of_two_holds_the_truth_94_to_96_and_a_half_times_in_100(double gauge) {
    covered(
        chance ->
            covers(Gum.mean(readings(2, 2, gauge * chance.nextGaussian(), chance), gauge), 60),
        0.967);
  }

  @Test
  void sums_differences_products_and_ratios_lie_in_their_intervals() {
    covered(c -> covers(Gum.difference(drawn(100, 2, c), drawn(60, 1, c)), 40));
    covered(c -> covers(Gum.product(drawn(100, 2, c), drawn(60, 1, c)), 6000));
    covered(c -> covers(Gum.ratio(drawn(100, 2, c), drawn(60, 1, c)), 100 / 60.0));
    covered(c -> covers(Gum.scale(-3, drawn(100, 2, c)), -300));
    covered(
        c ->
            covers(
                Gum.linear(
                    new double[] {2, -1}, java.util.List.of(drawn(100, 2, c), drawn(60, 1, c))),
                140));
  }

  /** Two readings with one gauge whose error is half of the variance of each. */
  @Test
  void a_difference_read_with_one_gauge_lies_in_its_interval() {
    covered(
        c -> {
          double gauge = Math.sqrt(0.5) * c.nextGaussian();
          double before = 100 + gauge + Math.sqrt(0.5) * c.nextGaussian();
          double after = 160 + gauge + Math.sqrt(0.5) * c.nextGaussian();
          return covers(Gum.difference(Estimate.of(after, 1), Estimate.of(before, 1), 0.5), 60);
        });
  }

  /** Degrees of freedom by Welch and Satterthwaite. */
  @Test
  void the_difference_of_two_means_lies_in_its_interval() {
    covered(c -> covers(differenceOfMeans(12, 12, 3, 0, c), -10));
  }

  /** Spread 2 of the ones and so much of the others. */
  @ParameterizedTest
  @CsvSource({
    "3, 3, 0.3",
    "3, 3, 1",
    "3, 3, 2",
    "3, 3, 3",
    "3, 3, 5",
    "3, 4, 0.5",
    "3, 4, 2",
    "3, 5, 1",
    "3, 5, 3",
    "3, 12, 0.5",
    "3, 12, 2",
    "3, 12, 4",
    "4, 4, 1",
    "4, 4, 2",
    "4, 4, 4",
    "4, 12, 1",
    "4, 12, 3",
    "5, 5, 2",
    "5, 5, 3",
    "5, 12, 2"
  })
  void the_difference_of_means_of_few_readings_lies_in_its_interval(
      int before, int after, double spread) {
    covered(chance -> covers(differenceOfMeans(before, after, spread, 0, chance), -10));
  }

  /** Each mean with an error of its gauge, from little of the whole to most of it. */
  @ParameterizedTest
  @CsvSource({"3, 3, 5", "4, 4, 2", "3, 12, 1", "4, 3, 3", "4, 12, 2", "5, 5, 2"})
  void so_does_that_of_means_read_with_gauges_that_have_errors_of_their_own(
      int before, int after, double gauge) {
    covered(chance -> covers(differenceOfMeans(before, after, 2, gauge, chance), -10));
  }

  @ParameterizedTest
  @CsvSource({
    "3, 3, 0.3",
    "3, 3, 0.5",
    "3, 3, 1",
    "3, 3, 1.5",
    "3, 4, 0.5",
    "4, 4, 0.5",
    "4, 4, 1"
  })
  void that_of_means_of_three_or_four_with_such_errors_holds_it_at_least_95_and_up_to_97_times(
      int before, int after, double gauge) {
    covered(chance -> covers(differenceOfMeans(before, after, 2, gauge, chance), -10), 0.972);
  }

  /** What {@link Gum#difference} owns up to: at least 95 %, and how much more. */
  @ParameterizedTest
  @CsvSource({
    "2, 12, 2, 0.94, 0.95",
    "2, 12, 6, 0.962, 0.971",
    "2, 3, 2, 0.969, 0.978",
    "2, 4, 3, 0.968, 0.977",
    "2, 2, 1, 0.973, 0.982",
    "2, 2, 2, 0.976, 0.985",
    "2, 2, 5, 0.968, 0.977"
  })
  void the_difference_of_a_mean_of_two_holds_what_is_said_of_it(
      int before, int after, double spread, double least, double most) {
    covered(
        chance -> covers(differenceOfMeans(before, after, spread, 0, chance), -10), least, most);
  }

  /** The same with a gauge's error in each mean. */
  @ParameterizedTest
  @CsvSource({
    "2, 2, 0.7, 0.985, 0.993",
    "2, 2, 4, 0.968, 0.977",
    "2, 3, 1, 0.975, 0.984",
    "2, 12, 1, 0.966, 0.975"
  })
  void so_does_that_of_a_mean_of_two_read_with_a_gauge_that_has_an_error(
      int before, int after, double gauge, double least, double most) {
    covered(chance -> covers(differenceOfMeans(before, after, 2, gauge, chance), -10), least, most);
  }

  private static Estimate differenceOfMeans(
      int n, int m, double spread, double gauge, RandomGenerator chance) {
    return Gum.difference(mean(n, 2, gauge, 0, chance), mean(m, spread, gauge, 10, chance));
  }

  private static Estimate mean(
      int n, double spread, double gauge, double shift, RandomGenerator chance) {
    double error = gauge * chance.nextGaussian();
    return Gum.mean(readings(n, spread, shift + error, chance), gauge);
  }

  @Test
  void what_such_work_has_been_before_and_a_reading_give_an_interval_that_holds() {
    covered(
        c -> {
          double truth = 60 + 5 * c.nextGaussian();
          return covers(Conformance.posterior(Estimate.of(60, 5), drawn(truth, 3, c)), truth);
        });
  }

  /** A value accepted at just 95 % by the acceptance range conforms in 95 of 100 cases. */
  @Test
  void a_value_on_the_rim_of_the_acceptance_range_conforms_as_often_as_it_says() {
    TargetRange target = new TargetRange(50, 56);
    TargetRange accepted = Conformance.acceptance(target, Estimate.of(0, 1.5), 0.95).orElseThrow();
    covered(c -> target.contains(accepted.least() + 1.5 * c.nextGaussian()));
  }

  @ParameterizedTest
  @CsvSource({"3, 0.8", "8, 0.9", "25, 0.95"})
  void a_one_sided_limit_holds_its_share_as_often_as_it_says(int n, double share) {
    double k = ToleranceFactor.oneSided(n, share, 0.95);
    NormalDistribution truth = NormalDistribution.of(60, 2);
    covered(
        c -> {
          Summary s = Summary.of(readings(n, 2, 0, c));
          return truth.cumulativeProbability(s.mean() + k * s.standardDeviation()) >= share;
        });
  }
}
