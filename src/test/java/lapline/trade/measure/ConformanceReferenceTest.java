package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conformance, propagation and summary statistics against JCGM 106:2012, JCGM 100:2008 and NIST
 * StRD.
 */
class ConformanceReferenceTest {

  /**
   * JCGM 106:2012, 7.3.3 example 1 (breakdown voltage) and 2 (burst strength), 7.4 (two-sided); the
   * inputs and printed results (0.92, 0.99, 0.66) of 7.3.3 are from memory of the document, the six
   * digits computed with scipy 1.10.1.
   */
  @ParameterizedTest
  @CsvSource({
    "-5.47,0.05,-Infinity,-5.4,0.919243",
    "509.7,8.6,490,Infinity,0.989010",
    "13.6,1.8,12.5,16.3,0.662630",
    "52.4675,1.5,50,70,0.950015"
  })
  void conformance_probability_agrees_with_jcgm_106(
      double value, double u, double least, double most, double expected) {
    assertThat(Conformance.probability(Estimate.of(value, u), new TargetRange(least, most)))
        .isCloseTo(expected, within(5e-7));
  }

  /** JCGM 106:2012, 8.3: a guard band of 1.645 u gives 95 % at a single limit. */
  @Test
  void guard_band_of_one_limit_agrees_with_jcgm_106() {
    assertThat(Conformance.guardBand(1, 0.95)).isCloseTo(1.644854, within(5e-7));
  }

  /** JCGM 100:2008, H.1 end gauge: u_c 32 nm, 16 effective degrees of freedom (from memory). */
  @Test
  void the_end_gauge_example_of_the_gum_comes_out() {
    Estimate sum =
        Gum.sum(
            List.of(
                new Estimate(0, 25, 18),
                new Estimate(0, 9.7, 25.6),
                new Estimate(0, 2.9, 50),
                new Estimate(0, 16.6, 2)));
    assertThat(sum.standardUncertainty()).isCloseTo(31.671, within(5e-4));
    assertThat(sum.degreesOfFreedom()).isCloseTo(16.76, within(5e-3));
  }

  /**
   * NIST StRD univariate NumAcc1, NumAcc3 and NumAcc4 (constructible data sets, from memory):
   * certified means 10000002, 1000000.2, 10000000.2, standard deviations 1, 0.1, 0.1.
   */
  @Test
  void summary_statistics_keep_their_digits_on_the_nist_sets() {
    Summary one = Summary.of(10000001, 10000003, 10000002);
    assertThat(one.mean()).isEqualTo(10000002);
    assertThat(one.standardDeviation()).isEqualTo(1);
    Summary three = Summary.of(alternating(1000000.2));
    assertThat(three.mean()).isCloseTo(1000000.2, within(1e-8));
    assertThat(three.standardDeviation()).isCloseTo(0.1, within(1e-9));
    Summary four = Summary.of(alternating(10000000.2));
    assertThat(four.mean()).isCloseTo(10000000.2, within(1e-7));
    assertThat(four.standardDeviation()).isCloseTo(0.1, within(1e-8));
  }

  private static double[] alternating(double middle) {
    double[] values = new double[1001];
    values[0] = middle;
    for (int i = 1; i < values.length; i++) {
      values[i] = middle + (i % 2 == 1 ? -0.1 : 0.1);
    }
    return values;
  }
}
