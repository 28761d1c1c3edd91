package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;

/**
 * Draws against what is known without them. How often their interval holds is told by {@code
 * StatedStrokeProperties}, how near they come to what can be known by {@code
 * StrokeEfficiencyProperties}.
 */
class PanelDrawsTest {
  private static final int DRAWS = 400;
  private static final int BEFORE = 100_000;

  private static StrokeFit fit(double noise, int places) {
    SprayedPanel panel = new SprayedPanel();
    Random chance = SprayedPanel.chance(7);
    PassPlan plan = panel.spray(chance);
    List<FilmAt> readings =
        panel.read(places, chance).stream()
            .map(r -> new FilmAt(r.x(), r.y(), r.film(), noise))
            .toList();
    return new PanelFits(plan, readings).searched(List.of()).settled();
  }

  @Test
  void the_same_readings_give_the_same_draws() {
    StrokeFit fit = fit(1.8e-6, 20);
    assertThat(PanelDraws.overlap(List.of(fit), DRAWS))
        .isEqualTo(PanelDraws.overlap(List.of(fit), DRAWS));
  }

  /** A gauge that tells nothing leaves what was written down: steps of 3 mm, a fan of 4 %. */
  @Test
  void readings_that_tell_nothing_leave_the_record() {
    StrokeFit fit = fit(1e-3, 12);
    PassPlan plan = fit.model().plan();
    Estimate told = PanelDraws.overlap(List.of(fit), DRAWS);

    double share = plan.stepOverPanel() / plan.fanWidth().value();
    double ofSteps = 0;
    for (PassPlan.Coat coat : plan.coats()) {
      int[] over = coat.over(plan.height());
      int steps = over[1] - over[0];
      ofSteps += Math.pow(0.003 / plan.stepOverPanel() / 2, 2) / steps;
    }
    double unsure = share * Math.sqrt(0.04 * 0.04 + 0.01 * 0.01 + ofSteps);
    assertThat(told.value()).isCloseTo(1 - share, within(4 * unsure / Math.sqrt(DRAWS)));
    assertThat(told.standardUncertainty()).isCloseTo(unsure, within(0.15 * unsure));
  }

  /** Two names for one fit count it no more than once. */
  @Test
  void the_same_fit_twice_is_that_fit() {
    StrokeFit fit = fit(1.8e-6, 20);
    Estimate once = PanelDraws.overlap(List.of(fit), DRAWS);
    Estimate twice = PanelDraws.overlap(List.of(fit, fit), DRAWS);
    assertThat(twice.value()).isCloseTo(once.value(), within(0.3 * once.standardUncertainty()));
    assertThat(twice.standardUncertainty())
        .isCloseTo(once.standardUncertainty(), within(0.2 * once.standardUncertainty()));
  }

  /** By the mean over what was possible before, which takes a gauge that tells little. */
  @Test
  void the_evidence_is_the_mean_of_the_likelihood_over_what_was_possible() {
    StrokeFit fit = fit(2e-5, 12);
    AboutFit about = new AboutFit(fit, 1);
    Random chance = SprayedPanel.chance(1);
    int dimensions = fit.parameters().length + 2 * fit.model().plan().passes();
    double mean =
        IntStream.range(0, BEFORE)
            .mapToDouble(
                i -> {
                  double[] point = new double[dimensions];
                  Arrays.setAll(point, j -> chance.nextGaussian());
                  return Math.exp(about.logReadings(point));
                })
            .average()
            .orElseThrow();
    assertThat(PanelDraws.logEvidence(List.of(fit), 1, 2_000))
        .isCloseTo(Math.log(mean), within(0.15));
  }
}
