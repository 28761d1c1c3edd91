package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.random.RandomGenerator;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceFactorReferenceTest {
  private static final int TRIALS = 20_000;

  @ParameterizedTest
  @CsvFileSource(resources = "tolerance-factors.csv", useHeadersInDisplayName = true)
  void factors_are_those_of_other_programs(
      int readings, double share, double confidence, double oneSided, double twoSided) {
    assertThat(ToleranceFactor.oneSided(readings, share, confidence))
        .isCloseTo(oneSided, within(1e-5));
    assertThat(ToleranceFactor.twoSided(readings, share, confidence))
        .isCloseTo(twoSided, within(1e-5));
  }

  /** The seed is the number of readings. */
  @ParameterizedTest
  @CsvSource({"3, 0.8", "8, 0.9", "25, 0.95"})
  void the_interval_holds_its_share_as_often_as_it_says(int readings, double share) {
    RandomGenerator chance = new Random(readings);
    double k = ToleranceFactor.twoSided(readings, share, 0.95);
    NormalDistribution truth = NormalDistribution.of(0, 1);
    int held = 0;

    for (int i = 0; i < TRIALS; i++) {
      double[] read = chance.doubles(readings).map(truth::inverseCumulativeProbability).toArray();
      Summary s = Summary.of(read);
      double reach = k * s.standardDeviation();
      held += truth.probability(s.mean() - reach, s.mean() + reach) >= share ? 1 : 0;
    }

    assertThat((double) held / TRIALS).isBetween(0.94, 0.96);
  }

  @Test
  void one_reading_holds_nothing_and_all_of_everything_takes_infinitely_much() {
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> ToleranceFactor.twoSided(1, 0.9, 0.9))
        .withMessageContaining("readings is 1.0; it must be 2.0 to");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> ToleranceFactor.oneSided(5, 1, 0.9))
        .withMessageContaining("share is 1.0");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> ToleranceFactor.oneSided(5, 0.9, Double.NaN))
        .withMessageContaining("confidence is NaN");
  }
}
