package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.Samples;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class DesirabilityTest {
  private static final TargetRange RANGE = new TargetRange(50, 65);

  private static double expected(double value, double u) {
    return Desirability.expected(Estimate.of(value, u), RANGE, 6);
  }

  @Test
  void inside_its_range_a_known_value_gives_all() {
    assertThat(expected(50, 0)).isCloseTo(1, within(1e-12));
    assertThat(expected(65, 0)).isCloseTo(1, within(1e-12));
  }

  @Test
  void one_fade_outside_a_known_value_gives_e_to_the_minus_one_half() {
    assertThat(expected(44, 0)).isCloseTo(Math.exp(-0.5), within(1e-12));
    assertThat(expected(71, 0)).isCloseTo(Math.exp(-0.5), within(1e-12));
  }

  /**
   * On the limit, with u as large as the fade: half a chance of all, half of a bell's mean 1/√2.
   */
  @Test
  void what_is_not_known_for_sure_is_averaged_over() {
    double e = Desirability.expected(Estimate.of(0, 1), TargetRange.atMost(0), 1);
    assertThat(e).isCloseTo(0.853553, within(0.01));
  }

  @Test
  void it_lies_between_nothing_and_all_and_falls_the_further_out_a_value_is() {
    Samples.each(
        500,
        chance -> {
          double u = Samples.ofAnySize(chance, 0.01, 20);
          double out = 65 + 30 * chance.nextDouble();
          double near = expected(out, u);
          double far = expected(out + 5 * chance.nextDouble(), u);
          assertThat(near).isBetween(0.0, 1.0);
          assertThat(far).isLessThanOrEqualTo(near + 1e-12);
        });
  }

  @Test
  void a_small_change_of_the_work_changes_the_points_by_little() {
    Samples.each(
        500,
        chance -> {
          double value = 30 + 60 * chance.nextDouble();
          double u = 3 * chance.nextDouble();
          // the bell is steepest at one fade: e^−½ / 6 per µm
          assertThat(Math.abs(expected(value + 0.01, u) - expected(value, u)))
              .isLessThan(0.01 * Math.exp(-0.5) / 6 + 1e-6);
        });
  }
}
