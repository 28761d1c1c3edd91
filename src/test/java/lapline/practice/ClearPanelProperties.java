package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The practice score moves smoothly, and never up as the work gets worse. */
class ClearPanelProperties {
  private static final long SEED = 20310304;

  private static double score(double film, double unevenness) {
    PanelEntry entry = ClearPanel.good().film(film, unevenness).read().entry();
    return PanelScorer.practiceScore(PanelScorer.judge(ClearPanel.TASK, entry));
  }

  @Test
  void a_film_further_outside_never_scores_higher() {
    Random chance = new Random(SEED);
    for (int i = 0; i < 60; i++) {
      double outside = 1 + 30 * chance.nextDouble();
      double more = outside + 4 * chance.nextDouble();
      String sample = "seed " + SEED + ", sample " + i + ": " + outside + " and " + more;
      assertThat(score(50 - more, 1)).as(sample).isLessThanOrEqualTo(score(50 - outside, 1) + 1e-9);
      assertThat(score(65 + more, 1)).as(sample).isLessThanOrEqualTo(score(65 + outside, 1) + 1e-9);
    }
  }

  @Test
  void a_rougher_hand_never_scores_higher() {
    double before = Double.POSITIVE_INFINITY;
    for (double unevenness = 0; unevenness <= 8; unevenness += 0.25) {
      double now = score(57.5, unevenness);
      assertThat(now).as("unevenness " + unevenness).isLessThanOrEqualTo(before + 1e-9);
      before = now;
    }
  }

  @Test
  void a_tenth_of_a_micrometre_moves_it_by_less_than_a_point() {
    for (double film = 20; film < 100; film += 0.37) {
      double step = Math.abs(score(film + 0.1, 1) - score(film, 1));
      assertThat(step).as("film of " + film + " µm").isLessThan(1);
    }
  }
}
