package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Hands whose steps stray by 6 mm and whose passes are uneven by 3 %: what is left after the fit is
 * as large as the scatter says, and goes together no more than chance has it. Seeds 0 to 299.
 */
class HandScatterProperties {
  private static final int SEEDS = 300;
  private static final int PLACES = 40;

  @Test
  void what_steady_hands_leave_is_the_scatter_that_was_stated() {
    double squares = 0;
    double neighbours = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random chance = new Random(seed);
      SprayedPanel panel = new SprayedPanel();
      panel.written = seed % 2 == 0;
      PassPlan plan = panel.spray(chance);
      List<FilmAt> readings = panel.read(PLACES, chance);
      StrokeFit fit = new PanelFits(plan, readings).searched(List.of());
      double[] left = fit.residual();
      squares += StrokeFit.square(left) / PLACES;
      for (int i = 1; i < PLACES; i++) {
        neighbours += left[i] * left[i - 1] / (PLACES - 1);
      }
    }
    // six parameters of forty, most of them held by what was written down
    assertThat(squares / SEEDS).isBetween(0.85, 1.05);
    assertThat(neighbours / SEEDS).isBetween(-0.1, 0.1);
  }
}
