package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.random.RandomGenerator;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Summary;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** So many further readings settle a doubtful verdict as often as is said. */
class FurtherReadingsProperties {
  private static final TargetRange CLEAR = new TargetRange(50, 65);
  private static final int PANELS = 20_000;

  /**
   * A panel that may have given these readings: spread and mean as the readings leave them open,
   * then so many more readings of it, and the verdict on all.
   */
  private static boolean settles(
      RandomGenerator chance, double mean, double spread, int count, int more, TargetRange range) {
    double squares = 0;
    for (int i = 0; i < count - 1; i++) {
      squares += Math.pow(chance.nextGaussian(), 2);
    }
    double sigma = spread * Math.sqrt((count - 1) / squares);
    double mu = mean + sigma / Math.sqrt(count) * chance.nextGaussian();
    double[] all = new double[count + more];
    // two values stand for the old readings: same mean, same spread
    double apart = spread * Math.sqrt((count - 1) / 2.0);
    for (int i = 0; i < count; i++) {
      all[i] = mean + (i == 0 ? apart : i == 1 ? -apart : 0);
    }
    for (int i = count; i < all.length; i++) {
      all[i] = mu + sigma * chance.nextGaussian();
    }
    Summary s = Summary.of(all);
    Estimate after =
        new Estimate(s.mean(), s.standardDeviation() / Math.sqrt(all.length), all.length - 1.0);
    return Verdict.of(Conformance.probability(after, range)) != Verdict.DOUBTFUL;
  }

  private static double share(double mean, double spread, int count, int more, TargetRange range) {
    Random chance = new Random(1);
    int settled = 0;
    for (int i = 0; i < PANELS; i++) {
      settled += settles(chance, mean, spread, count, more, range) ? 1 : 0;
    }
    return settled / (double) PANELS;
  }

  @ParameterizedTest
  @CsvSource({
    "51, 3, 8, 10",
    "51, 3, 8, 40",
    "64, 4, 5, 12",
    "64, 4, 15, 30",
    "57, 9, 6, 6",
    "49.5, 3, 10, 20"
  })
  void the_chance_of_being_settled_is_the_share_of_simulated_panels(
      double mean, double spread, int count, int more) {
    assertThat(FurtherReadings.chanceSettled(mean, spread, count, 0, CLEAR, more))
        .isCloseTo(share(mean, spread, count, more, CLEAR), within(0.03));
  }

  @Test
  void so_many_more_as_are_said_to_settle_four_panels_in_five_do_and_one_less_does_not() {
    int likely = FurtherReadings.toSettleLikely(51, 3, 8, 0, CLEAR, 0.8, 1000).getAsInt();

    assertThat(share(51, 3, 8, likely, CLEAR)).isCloseTo(0.8, within(0.03));
    assertThat(FurtherReadings.chanceSettled(51, 3, 8, 0, CLEAR, likely)).isGreaterThan(0.8);
    assertThat(FurtherReadings.chanceSettled(51, 3, 8, 0, CLEAR, likely - 1)).isLessThan(0.8);
  }

  @Test
  void one_limit_is_settled_on_either_side_of_it() {
    TargetRange least = TargetRange.atLeast(50);

    assertThat(FurtherReadings.chanceSettled(51, 3, 8, 0, least, 20))
        .isCloseTo(share(51, 3, 8, 20, least), within(0.03));
  }

  @Test
  void more_readings_never_settle_less_surely_and_an_offset_stays() {
    double before = 0;
    for (int more = 1; more < 200; more += 9) {
      double chance = FurtherReadings.chanceSettled(51, 3, 8, 0, CLEAR, more);
      assertThat(chance).isGreaterThanOrEqualTo(before - 0.02);
      before = chance;
    }
    assertThat(FurtherReadings.toSettleLikely(50.1, 1, 20, 3, CLEAR, 0.8, 1000)).isEmpty();
  }

  /** Before and after, five readings each: the interval of the build holds the true one. */
  @Test
  void the_interval_of_a_build_from_repeated_readings_holds_the_true_build() {
    Random chance = new Random(1);
    int held = 0;
    for (int i = 0; i < PANELS; i++) {
      Estimate build = FilmBuild.of(read(chance, 110e-6, 2e-6, 5), read(chance, 168e-6, 3e-6, 8));
      double k = Gum.coverageFactor(build.degreesOfFreedom());
      held += Math.abs(build.value() - 58e-6) <= k * build.standardUncertainty() ? 1 : 0;
    }
    // the factor is that of 95.45 %
    assertThat(held / (double) PANELS).isBetween(0.945, 0.96);
  }

  private static Estimate read(RandomGenerator chance, double film, double spread, int count) {
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = film + spread * chance.nextGaussian();
    }
    return Gum.mean(values, 0);
  }

  /** One gauge, whose offset is the same in both readings, drops out as the correlation says. */
  @Test
  void the_interval_of_a_build_read_with_one_gauge_holds_the_true_build() {
    Random chance = new Random(1);
    int held = 0;
    double u = Math.hypot(1.5e-6, 1e-6);
    double shared = 1.5e-6 * 1.5e-6 / (u * u);
    for (int i = 0; i < PANELS; i++) {
      double offset = 1.5e-6 * chance.nextGaussian();
      Estimate before = Estimate.of(110e-6 + offset + 1e-6 * chance.nextGaussian(), u);
      Estimate after = Estimate.of(168e-6 + offset + 1e-6 * chance.nextGaussian(), u);
      Estimate build = FilmBuild.of(before, after, shared);
      held += Math.abs(build.value() - 58e-6) <= 1.959964 * build.standardUncertainty() ? 1 : 0;
    }
    assertThat(held / (double) PANELS).isBetween(0.94, 0.96);
  }
}
