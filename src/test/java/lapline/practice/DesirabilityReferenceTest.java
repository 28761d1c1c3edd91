package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

/**
 * The expectation of the points agrees with an integral known in closed form. For a target of one
 * point the bell is exp(−x²/2f²), and its expectation over a normal x of mean d and spread u is f /
 * √(f² + u²) · exp(−d² / 2(f² + u²)), by completing the square.
 */
class DesirabilityReferenceTest {
  @Test
  void the_expectation_agrees_with_the_product_of_two_bells() {
    TargetRange point = new TargetRange(0, 0);
    for (double d : new double[] {0, 0.5, 1, 2, 3}) {
      for (double u : new double[] {0, 0.1, 0.3, 0.6}) {
        double sum = 1 + u * u;
        double exact = Math.exp(-d * d / (2 * sum)) / Math.sqrt(sum);
        assertThat(Desirability.expected(Estimate.of(d, u), point, 1))
            .as("d " + d + ", u " + u)
            .isCloseTo(exact, within(1e-5));
      }
    }
  }
}
