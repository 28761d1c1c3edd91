package lapline.judgement.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import lapline.Samples;
import lapline.judgement.progress.SizeTrend.Told;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether sizes shrink, against worked examples and tables from elsewhere. */
class SizeTrendReferenceTest {

  private static SizeTrend of(double[] at, double... sizes) {
    return SizeTrend.of(at, sizes).orElseThrow();
  }

  private static double[] inTurn(int howMany) {
    return IntStream.rangeClosed(1, howMany).asDoubleStream().toArray();
  }

  /**
   * Sen's own example, 1968: slope 4, at a confidence of 93 % (both from memory); the interval is
   * 15/4 to 46/11 by the fifth slope from either end.
   */
  @Test
  void sens_own_example_comes_out() {
    SizeTrend trend = of(new double[] {1, 2, 3, 4, 10, 12, 18}, 9, 15, 19, 20, 45, 55, 78);
    assertThat(trend.slope()).isCloseTo(4, within(1e-12));
    assertThat(trend.held()).isCloseTo(0.93, within(0.005));
    assertThat(trend.least()).isCloseTo(15 / 4.0, within(1e-12));
    assertThat(trend.most()).isCloseTo(46 / 11.0, within(1e-12));
    assertThat(trend.told()).isEqualTo(Told.GROWING);
  }

  /**
   * Five years of rain over seeded ground, example 9.1 of Hollander &amp; Wolfe, Nonparametric
   * Statistical Methods (data from memory; slope by SciPy 1.17.1, theilslopes): −0.05625.
   */
  @Test
  void the_textbooks_rain_has_its_slope_and_no_sure_trend() {
    SizeTrend trend = of(inTurn(5), 1.26, 1.27, 1.12, 1.16, 1.03);
    assertThat(trend.slope()).isCloseTo(-0.05625, within(1e-12));
    assertThat(trend.held()).isCloseTo(1 - 2 * 5 / 120.0, within(1e-12));
    assertThat(trend.least()).isCloseTo(-0.13, within(1e-12));
    assertThat(trend.most()).isCloseTo(0.01, within(1e-12));
    assertThat(trend.told()).isEqualTo(Told.NEITHER);
  }

  /**
   * Upper tails of Kendall's K as printed in tables of the exact distribution: .042 for 4 things at
   * 6 and for 5 at 8, .028 for 6 at 11, .035 for 7 at 13 (by counting all orders with another
   * program). The interval leaves that out on either side.
   */
  @ParameterizedTest
  @CsvSource({"4, 0.041667", "5, 0.041667", "6, 0.027778", "7, 0.034524"})
  void what_is_left_out_on_either_side_is_what_tables_of_kendalls_k_print(int things, double tail) {
    double held = of(inTurn(things), inTurn(things)).held();
    assertThat((1 - held) / 2).isCloseTo(tail, within(5.1e-7));
  }

  @Test
  void one_odd_size_does_not_turn_a_trend_round() {
    SizeTrend trend = of(inTurn(8), 20, 18, 17, 90, 13, 11, 9, 8);
    assertThat(trend.told()).isEqualTo(Told.SHRINKING);
    assertThat(trend.slope()).isBetween(-3.0, -1.0);
  }

  /** All orders of unlike sizes are as likely without a trend, so the interval holds 0 as said. */
  @Test
  void without_a_trend_the_interval_holds_naught_as_often_as_it_says() {
    int[] held = new int[1];
    Samples.each(
        2000,
        chance -> {
          double[] sizes = new double[7];
          for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.exp(chance.nextGaussian());
          }
          held[0] += of(inTurn(7), sizes).told() == Told.NEITHER ? 1 : 0;
        });
    assertThat(held[0] / 2000.0).isBetween(0.91, 0.95);
  }

  @Test
  void alike_sizes_show_no_trend_and_three_are_too_few() {
    assertThat(of(inTurn(4), 3, 3, 3, 3).told()).isEqualTo(Told.NEITHER);
    assertThat(SizeTrend.of(inTurn(3), inTurn(3))).isEmpty();
    assertThat(SizeTrend.of(new double[0], new double[0])).isEmpty();
  }

  @Test
  void what_is_no_number_or_out_of_order_is_refused_with_its_value() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      refused(() -> SizeTrend.of(new double[] {1}, new double[] {bad}), "sizes has " + bad);
      refused(() -> SizeTrend.of(new double[] {bad}, new double[] {1}), "at has " + bad);
    }
    refused(() -> SizeTrend.of(new double[] {1, 1}, new double[] {1, 2}), "at has 1.0");
    refused(() -> SizeTrend.of(inTurn(2), inTurn(3)), "at has 2 places");
  }

  private static void refused(Runnable call, String says) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessageContaining(says);
  }
}
