package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;

/** A whole panel from what is typed to what it is told, by the task file of the course. */
class ClearPanelTest {

  private static Result result(PanelScore score, String criterion) {
    return score.results().stream()
        .filter(r -> r.criterion().id().equals(criterion))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_panel_well_sprayed_is_accepted_with_more_than_90_points() {
    PanelScore score = ClearPanel.good().score();
    assertThat(score.standing()).isEmpty();
    assertThat(score.accepted()).isTrue();
    assertThat(score.practiceScore()).isBetween(90.0, 100.0);
    assertThat(score.results()).allMatch(Result::judged);
    assertThat(score.results()).allMatch(r -> r.verdict() == Verdict.MET);
    assertThat(score.film()).isNotNull();
  }

  @Test
  void a_thin_panel_is_not_accepted_and_told_first_that_the_film_is_low() {
    PanelScore score = ClearPanel.good().film(40, 1).score();
    assertThat(score.accepted()).isFalse();
    assertThat(score.standing()).containsExactly("film", "film-rule");
    assertThat(result(score, "film").verdict()).isEqualTo(Verdict.MISSED);
    assertThat(score.findings()).isNotEmpty();
    assertThat(score.findings().get(0).id()).isEqualTo("too-little");
  }

  @Test
  void the_film_is_named_once_by_the_model_or_where_it_cannot_tell_as_a_doubt() {
    assertThat(ClearPanel.good().film(40, 1).score().findings())
        .extracting(Finding::id)
        .doesNotContain("film.low");
    assertThat(ClearPanel.good().film(51, 1).score().findings())
        .extracting(Finding::id)
        .contains("film.doubt")
        .doesNotContain("film.low", "too-little");
  }

  @Test
  void without_the_fan_width_the_overlap_is_not_judged_and_says_what_it_wants() {
    PanelScore score = ClearPanel.good().without("fan-width").score();
    Result overlap = result(score, "overlap");
    assertThat(overlap.judged()).isFalse();
    assertThat(overlap.missing()).contains("fan-width");
    assertThat(score.accepted()).isTrue();
  }

  @Test
  void what_was_not_measured_costs_no_points_but_a_critical_one_bounds_the_score() {
    double all = ClearPanel.good().score().practiceScore();
    PanelScore plain = ClearPanel.good().without("fluid-turns").score();
    assertThat(plain.practiceScore()).isCloseTo(all, within(1.0));
    PanelScore score = ClearPanel.good().without("humidity").score();
    assertThat(score.standing()).containsExactly("dew");
    assertThat(score.accepted()).isFalse();
    assertThat(score.practiceScore()).isBetween(80.0, PracticeScore.DOUBTFUL);
  }

  @Test
  void a_single_bare_place_breaks_the_counting_rule_though_the_mean_is_good() {
    PanelScore score =
        ClearPanel.good().put("film-before.at15", "80").put("film-after.at15", "110").score();
    assertThat(result(score, "film").verdict()).isEqualTo(Verdict.MET);
    assertThat(score.standing()).containsExactly("film-rule");
  }

  @Test
  void too_much_hardener_is_told_with_its_rivals() {
    PanelScore score = ClearPanel.good().put("mix-amount.s2", "140 ml").score();
    assertThat(result(score, "mix").verdict()).isEqualTo(Verdict.MISSED);
    assertThat(result(score, "mix").instances().get(0).where()).isEqualTo(Cell.of("mix-amount.s2"));
    Finding mix =
        score.findings().stream().filter(f -> f.id().equals("mix.high")).findFirst().orElseThrow();
    assertThat(mix.rivals()).isNotEmpty();
    assertThat(mix.support()).isGreaterThan(0.95);
  }

  @Test
  void a_film_near_the_limit_is_doubtful_with_advice() {
    Result film = result(ClearPanel.good().film(50.8, 1).score(), "film");
    assertThat(film.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(film.advice()).isNotNull();
  }

  @Test
  void nothing_measured_is_nothing_judged() {
    PanelScore score = PanelScorer.score(ClearPanel.TASK, PanelEntry.of(java.util.List.of()));
    assertThat(score.accepted()).isFalse();
    assertThat(score.practiceScore()).isZero();
    assertThat(score.results()).noneMatch(Result::judged);
    assertThat(score.findings()).isEmpty();
  }

  @Test
  void a_blend_that_is_meant_to_run_out_has_no_film_map() {
    PracticeTask blend = WrittenPanel.COURSE.find("coverage/base-over-spot").orElseThrow();
    java.util.List<Reading> film = new java.util.ArrayList<>();
    for (int place = 1; place <= 4; place++) {
      film.add(new Reading(Cell.place("film-before", place), 90e-6, 1e-6, ""));
      film.add(new Reading(Cell.place("film-after", place), 110e-6, 1e-6, ""));
    }
    assertThat(PanelScorer.score(blend, PanelEntry.of(film)).film()).isNull();
  }
}
