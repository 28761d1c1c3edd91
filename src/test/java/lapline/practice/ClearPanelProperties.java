package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.Samples;
import lapline.practice.quantity.MeasuredPanel;
import org.junit.jupiter.api.Test;

/** The practice score of a panel of clear moves smoothly, and never up as the work gets worse. */
class ClearPanelProperties {
  /** The share of the area is drawn, and a draw more or less moves it by so much. */
  private static final double DRAWN = 0.15;

  private static double score(double film, double unevenness) {
    PanelEntry entry = ClearPanel.good().film(film, unevenness).read().entry();
    return PracticeScore.smooth(PanelScorer.judge(new MeasuredPanel(ClearPanel.TASK, entry)));
  }

  @Test
  void a_film_further_outside_never_scores_higher() {
    Samples.each(
        8,
        chance -> {
          double outside = 1 + 30 * chance.nextDouble();
          double more = outside + 4 * chance.nextDouble();
          assertThat(score(50 - more, 1)).isLessThanOrEqualTo(score(50 - outside, 1) + DRAWN);
          assertThat(score(65 + more, 1)).isLessThanOrEqualTo(score(65 + outside, 1) + DRAWN);
        });
  }

  @Test
  void a_rougher_hand_never_scores_higher() {
    double before = Double.POSITIVE_INFINITY;
    for (double unevenness = 0.5; unevenness <= 8; unevenness += 1) {
      double now = score(57.5, unevenness);
      assertThat(now).as("unevenness " + unevenness).isLessThanOrEqualTo(before + DRAWN);
      before = now;
    }
  }

  @Test
  void a_tenth_of_a_micrometre_moves_it_by_less_than_a_point() {
    Samples.each(
        12,
        chance -> {
          double film = 30 + 55 * chance.nextDouble();
          assertThat(Math.abs(score(film + 0.1, 1) - score(film, 1))).isLessThan(1);
        });
  }

  /**
   * From surely missed over doubtful to surely met the ceiling climbs from 79 to 94; it must not
   * jump there. A quarter of a micrometre is worth up to three points on the way.
   */
  @Test
  void across_a_limit_of_the_film_it_climbs_without_a_jump() {
    for (double limit : new double[] {50, 65}) {
      double before = score(limit - 3, 1);
      for (double film = limit - 2.75; film <= limit + 3; film += 0.25) {
        double now = score(film, 1);
        assertThat(Math.abs(now - before)).as("at a film of %.2f µm", film).isLessThan(4);
        before = now;
      }
    }
  }
}
