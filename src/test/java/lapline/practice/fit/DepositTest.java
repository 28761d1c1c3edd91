package lapline.practice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DepositTest {
  /**
   * Parabola at 50 % overlap: coefficient of variation √5/20, least over most 2/3. By hand: T = 1 −
   * u² + 1 − (1 − u)² over one step, in units of the peak.
   */
  @Test
  void even_passes_at_half_overlap_have_the_analytic_ripple() {
    double sum = 0;
    double squares = 0;
    double least = Double.MAX_VALUE;
    double most = 0;
    int steps = 4000;
    for (int i = 0; i < steps; i++) {
      double film = Deposit.UPRIGHT.passes((i + 0.5) / steps * 0.1, 0.1, 0.2);
      sum += film;
      squares += film * film;
      least = Math.min(least, film);
      most = Math.max(most, film);
    }
    double mean = sum / steps;
    assertThat(mean).isCloseTo(1, within(2e-4));
    assertThat(Math.sqrt(squares / steps - mean * mean) / mean)
        .isCloseTo(Math.sqrt(5) / 20, within(2e-4));
    assertThat(least / most).isCloseTo(2.0 / 3, within(5e-4));
  }

  @Test
  void heel_moves_paint_to_one_side_and_loses_none() {
    double upright = 0;
    double heeled = 0;
    double lower = 0;
    for (int i = 0; i < 2000; i++) {
      double u = (i + 0.5) / 1000 - 1;
      upright += Deposit.UPRIGHT.stroke(u);
      heeled += Deposit.HEELED.stroke(u);
      lower += u < 0 ? Deposit.HEELED.stroke(u) : 0;
    }
    assertThat(heeled).isCloseTo(upright, within(2e-3 * upright));
    assertThat(lower).isGreaterThan(0.55 * heeled);
  }

  @Test
  void the_more_passes_overlap_the_less_a_tilt_shows() {
    assertThat(tiltShown(0.3)).isLessThan(0.06);
    assertThat(tiltShown(2 / 3.0)).isGreaterThan(3 * tiltShown(0.3));
  }

  /** Largest difference between heeled and upright passes, of the mean film. */
  private static double tiltShown(double stepInFans) {
    double most = 0;
    for (int i = 0; i < 100; i++) {
      double y = i / 100.0 * stepInFans;
      double shown =
          Deposit.HEELED.passes(y, stepInFans, 1) - Deposit.UPRIGHT.passes(y, stepInFans, 1);
      most = Math.max(most, Math.abs(shown));
    }
    return most;
  }
}
