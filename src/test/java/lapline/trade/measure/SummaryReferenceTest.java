package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Mean and standard deviation against the certified values of NIST StRD. */
class SummaryReferenceTest {

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "nist-strd.csv",
      maxCharsPerColumn = 10000,
      useHeadersInDisplayName = true)
  void summaries_agree_with_the_certified_values(
      String name,
      double mean,
      double deviation,
      double meanTolerance,
      double deviationTolerance,
      String values) {
    Summary summary =
        Summary.of(Arrays.stream(values.split(" ")).mapToDouble(Double::parseDouble).toArray());
    assertThat(summary.mean()).isCloseTo(mean, within(Math.abs(mean) * meanTolerance));
    assertThat(summary.standardDeviation())
        .isCloseTo(deviation, within(deviation * deviationTolerance));
  }

  @Test
  void num_acc_1_comes_out_exactly() {
    Summary one = Summary.of(10000001, 10000003, 10000002);
    assertThat(one.mean()).isEqualTo(10000002);
    assertThat(one.standardDeviation()).isEqualTo(1);
  }

  /**
   * NumAcc2 to NumAcc4: 1001 numbers, the middle one and then a tenth below and above it by turns
   * (construction from memory), certified standard deviation 0.1. The tenths are not binary, which
   * costs the larger ones digits before anything is computed.
   */
  @ParameterizedTest
  @CsvSource({"1.2,1e-15", "1000000.2,6e-10", "10000000.2,6e-9"})
  void num_acc_2_to_4_keep_the_digits_that_binary_numbers_have(double middle, double tolerance) {
    double[] values =
        IntStream.range(0, 1001)
            .mapToDouble(i -> i == 0 ? middle : near(middle, i % 2 == 1 ? -1 : 1))
            .toArray();
    Summary summary = Summary.of(values);
    assertThat(summary.mean()).isCloseTo(middle, within(middle * 1e-15));
    assertThat(summary.standardDeviation()).isCloseTo(0.1, within(tolerance));
  }

  private static double near(double middle, int tenths) {
    return Math.round(middle * 10 + tenths) / 10.0;
  }

  @Test
  void nothing_has_no_mean_and_one_reading_has_no_spread() {
    assertThatThrownBy(Summary::of).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Summary.of(1, Double.NaN)).isInstanceOf(MeasureException.class);
    assertThat(Summary.of(62)).isEqualTo(new Summary(1, 62, 0, 62, 62));
  }
}
