package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.PanelScore.Result;
import lapline.practice.PanelScore.Working;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;

/** No panel with a needed criterion missed or in doubt reads like a good one. */
class PracticeScoreTest {
  private static final String PRESSURE =
      criterion(
          "pressure", "gun-pressure", "150 to 180 kPa", "critical: yes, weight: 1, fade: 9 kPa");
  private static final String FLUID =
      criterion("fluid", "fluid-turns", "2 to 3", "weight: 20, fade: 0.5");

  private static double score(String pressure, String turns) {
    return WrittenPanel.against(PRESSURE, FLUID)
        .put("gun-pressure", pressure)
        .put("fluid-turns", turns)
        .score()
        .practiceScore();
  }

  @Test
  void everything_met_is_a_hundred() {
    assertThat(score("165 kPa", "2.5")).isEqualTo(100);
  }

  @Test
  void a_critical_criterion_missed_bounds_the_score_though_it_weighs_little() {
    assertThat(score("190 kPa", "2.5")).isBetween(70.0, PracticeScore.MISSED);
    assertThat(score("260 kPa", "2.5")).isLessThanOrEqualTo(score("190 kPa", "2.5"));
  }

  @Test
  void in_doubt_or_not_judged_it_stays_below_what_sure_work_gets() {
    assertThat(score("178 kPa", "2.5")).isBetween(PracticeScore.MISSED, PracticeScore.DOUBTFUL);
    assertThat(score("", "2.5")).isEqualTo(PracticeScore.DOUBTFUL);
  }

  @Test
  void with_the_same_fault_better_work_still_scores_higher() {
    assertThat(score("190 kPa", "2.5")).isGreaterThan(score("190 kPa", "3.3"));
  }

  @Test
  void it_is_rounded_down_and_no_hundred_while_anything_judged_is_not_met() {
    assertThat(score("165 kPa", "3")).isLessThan(100);
    Result nearly = sure(1, 0.879);
    assertThat(PracticeScore.of(List.of(nearly))).isEqualTo(87);
    assertThat(PracticeScore.of(List.of(sure(1, 0.879999)))).as("arithmetic").isEqualTo(88);
  }

  /**
   * 79 where it is surely missed, 94 where it is just sure, 100 where nothing speaks against it.
   */
  @Test
  void the_best_that_can_be_had_runs_straight_through_the_verdicts_limits() {
    assertThat(best(0)).isEqualTo(79);
    assertThat(best(1 - Verdict.SURE)).isEqualTo(79, within(1e-9));
    assertThat(best(0.5)).as("half way").isEqualTo((79 + 94) / 2.0, within(1e-9));
    assertThat(best(Verdict.SURE)).isEqualTo(94, within(1e-9));
    assertThat(best((1 + Verdict.SURE) / 2)).as("half way").isEqualTo(97, within(1e-9));
    assertThat(best(1)).isEqualTo(100);
  }

  @Test
  void the_least_sure_of_the_critical_ones_sets_it() {
    assertThat(PracticeScore.smooth(List.of(sure(1, 1), sure(0.5, 1), sure(0.95, 1))))
        .isEqualTo(best(0.5), within(1e-9));
  }

  @Test
  void what_the_panel_is_not_held_against_costs_nothing() {
    assertThat(PracticeScore.of(List.of(sure(1, 1), notJudged()))).isEqualTo(100);
    assertThat(PracticeScore.of(List.of(sure(1, 1), notJudged("film-after")))).isEqualTo(94);
    assertThat(score("165 kPa", "")).as("not critical").isEqualTo(100);
  }

  private static double best(double conformance) {
    return PracticeScore.smooth(List.of(sure(conformance, 1)));
  }

  /** The critical criterion, judged with so much certainty and worth so much of its points. */
  private static Result sure(double conformance, double points) {
    return result(true, conformance, points, List.of());
  }

  private static Result notJudged(String... missing) {
    return result(false, 0, 0, List.of(missing));
  }

  private static Result result(
      boolean judged, double conformance, double points, List<String> missing) {
    return new Result(
        WrittenPanel.against(PRESSURE).task().criteria().get(0),
        judged,
        judged ? Verdict.of(conformance) : Verdict.DOUBTFUL,
        conformance,
        165e3,
        3e3,
        null,
        points,
        List.of(),
        new Working("", "", List.of()),
        missing,
        null);
  }

  /** Worth nothing in points, and still no hundred while it is missed. */
  @Test
  void a_hundred_is_kept_for_panels_with_nothing_missed() {
    String heavy =
        criterion("fluid", "fluid-turns", "2 to 3", "critical: yes, weight: 1000, fade: 0.5");
    String light = criterion("tip", "gun-pressure", "150 to 180 kPa", "weight: 0.001, fade: 9 kPa");
    WrittenPanel panel = WrittenPanel.against(heavy, light).put("fluid-turns", "2.5");
    assertThat(panel.score().practiceScore()).isEqualTo(100);
    assertThat(panel.put("gun-pressure", "400 kPa").score().practiceScore()).isEqualTo(99);
  }

  @Test
  void a_kilopascal_nearer_never_costs_and_a_tenth_moves_it_little() {
    double before = 0;
    for (double kPa = 195; kPa > 165; kPa -= 0.1) {
      WrittenPanel panel = WrittenPanel.against(PRESSURE, FLUID);
      panel.put("gun-pressure", kPa + " kPa").put("fluid-turns", "2.5");
      double now = PracticeScore.smooth(panel.score().results());
      assertThat(now).as(kPa + " kPa").isBetween(before - 1e-9, kPa > 194.9 ? 100 : before + 1);
      before = now;
    }
  }
}
