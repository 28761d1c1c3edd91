package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PanelFindingsTest {
  private static final String RULES =
      """
        - {criterion: pressure, side: low, cause: It is too low., change: Turn it up., rivals: [A bad gauge.]}
        - {criterion: pressure, side: high, cause: It is too high., change: Turn it down.}
        - {criterion: fluid, side: any, cause: The knob is off., change: Count the turns.}
        - {criterion: film, side: low, cause: The film is thin., change: Go slower.}
      """;
  private static final String PRESSURE =
      criterion(
          "pressure", "gun-pressure", "150 to 180 kPa", "critical: yes, weight: 1, fade: 9 kPa");
  private static final String FLUID =
      criterion("fluid", "fluid-turns", "2 to 3", "weight: 1, fade: 0.5");
  private static final String FILM =
      criterion("film", "film-build", "50 to 65 um", "critical: yes, weight: 1, fade: 6 um");

  private final WrittenPanel panel = WrittenPanel.withFindings(RULES, PRESSURE, FLUID, FILM);

  private List<String> ids() {
    return panel.score().findings().stream().map(Finding::id).toList();
  }

  @Test
  void the_side_that_a_value_lies_on_chooses_the_cause() {
    panel.put("gun-pressure", "120 kPa");
    Finding low = panel.score().findings().get(0);
    assertThat(low.id()).isEqualTo("pressure.low");
    assertThat(low.cause().text()).isEqualTo("It is too low.");
    assertThat(low.change().text()).isEqualTo("Turn it up.");
    assertThat(low.rivals()).extracting(r -> r.cause().text()).containsExactly("A bad gauge.");
    assertThat(low.evidence().get(0).key()).isEqualTo("score.evidence.low");
    panel.put("gun-pressure", "210 kPa");
    assertThat(ids()).containsExactly("pressure.high");
  }

  @Test
  void a_cause_has_the_weight_of_the_miss_and_its_rivals_share_half_of_that() {
    panel.put("gun-pressure", "120 kPa");
    PanelScore score = panel.score();
    Finding low = score.findings().get(0);
    double missed = 1 - score.result("pressure").orElseThrow().conformance();
    assertThat(low.support()).isEqualTo(missed);
    assertThat(low.rivals()).extracting("support").containsExactly(missed / 2);
    assertThat(low.rivals()).extracting("id").containsExactly("pressure.low.1");
  }

  /** What was measured, and the limit of the side that it lies on. */
  @Test
  void the_sentence_that_proves_it_names_the_limit_that_was_missed() {
    assertThat(limit("120 kPa")).isEqualTo(150e3);
    assertThat(limit("210 kPa")).isEqualTo(180e3);
    assertThat(panel.score().findings().get(0).evidence().get(0).key())
        .isEqualTo("score.evidence.high");
  }

  private double limit(String pressure) {
    panel.put("gun-pressure", pressure);
    return panel.score().findings().get(0).evidence().get(0).args().get(2).value();
  }

  @Test
  void with_a_limit_on_one_side_only_that_side_is_meant() {
    assertThat(onlySide("at least 150 kPa", "100 kPa")).isEqualTo("pressure.low");
    assertThat(onlySide("at most 180 kPa", "400 kPa")).isEqualTo("pressure.high");
  }

  private static String onlySide(String target, String typed) {
    String one =
        criterion("pressure", "gun-pressure", target, "critical: yes, weight: 1, fade: 9 kPa");
    String rules =
        """
          - {criterion: pressure, side: low, cause: Low., change: Up.}
          - {criterion: pressure, side: high, cause: High., change: Down.}
        """;
    WrittenPanel panel = WrittenPanel.withFindings(rules, one);
    return panel.put("gun-pressure", typed).score().findings().get(0).id();
  }

  @Test
  void a_rule_of_another_criterion_is_not_taken() {
    String other =
        "  - {criterion: fluid, side: any, cause: The knob is off., change: Count the turns.}\n";
    WrittenPanel two = WrittenPanel.withFindings(other, PRESSURE, FLUID);
    assertThat(two.put("gun-pressure", "120 kPa").score().findings()).isEmpty();
  }

  @Test
  void what_is_met_has_no_cause() {
    panel.put("gun-pressure", "165 kPa").put("fluid-turns", "2.5");
    assertThat(ids()).isEmpty();
  }

  @Test
  void what_cost_most_comes_first_and_critical_counts_double() {
    panel.put("gun-pressure", "120 kPa").put("fluid-turns", "9");
    assertThat(ids()).containsExactly("pressure.low", "fluid.high");
    panel.put("gun-pressure", "145 kPa");
    assertThat(ids()).containsExactly("fluid.high", "pressure.low");
  }

  @Test
  void thin_film_is_told_once_by_the_cause_that_has_looked_at_the_mix() {
    panel.putAtPlaces("film-after", 36, 37, 35, 36, 37, 36, 35, 37, 36, 36, 35, 37, 36, 36, 36);
    assertThat(ids()).containsOnlyOnce("too-little").doesNotContain("film.low");
  }

  @Test
  void film_just_under_its_limit_is_in_doubt_and_nobody_is_told_to_go_slower() {
    panel.putAtPlaces("film-after", 50, 49, 50, 51, 50, 49, 50, 51, 50, 50, 49, 51, 50, 50, 50);
    assertThat(ids()).contains("film.doubt").doesNotContain("film.low", "too-little");
  }

  @Test
  void a_doubt_offers_no_cause_but_what_would_settle_it_and_stands_behind_what_was_missed() {
    panel.put("gun-pressure", "148 kPa").put("fluid-turns", "3.6");
    assertThat(ids()).containsExactly("fluid.high", "pressure.doubt");
    Finding doubt = panel.score().findings().get(1);
    assertThat(doubt.doubtful()).isTrue();
    assertThat(doubt.rivals()).isEmpty();
    assertThat(doubt.change().key()).isEqualTo("score.advice.sure-least");
  }

  @Test
  void what_the_readings_cannot_show_is_said_before_anything_else() {
    panel.put("gun-pressure", "120 kPa").putAtPlaces("film-after", 36, 37, 35);
    assertThat(ids()).startsWith("too-few.blind", "pressure.low");
    assertThat(panel.score().findings().get(0).doubtful()).isTrue();
  }

  /** One crazy figure is no reason to change a stroke. */
  @Test
  void a_reading_that_may_be_what_puts_the_film_out_is_read_again_before_anything_else() {
    WrittenPanel clear = oneCrazy();
    List<Finding> findings = clear.score().findings();
    assertThat(findings.get(0).id()).isEqualTo(Finding.STRAY);
    assertThat(findings.get(0).evidence().get(0).args().get(0).word()).isEqualTo("8");
    assertThat(clear.score().strays()).contains(findings.get(0));
    assertThat(findings).extracting(Finding::id).doesNotContain("film-even.low", "film-rule.low");
  }

  /** Its map, areas and share go without it; the rule that counts single readings does not. */
  @Test
  void one_reading_that_is_far_off_puts_nothing_out_but_itself() {
    PanelScore score = oneCrazy().score();
    assertThat(score.film().setAside()).containsExactly(8);
    assertThat(score.film().areas()).isEmpty();
    assertThat(score.film().shareInside()).isGreaterThan(0.95);
    assertThat(score.result("film-even").orElseThrow().verdict()).isEqualTo(Verdict.MET);
    Result rule = score.result("film-rule").orElseThrow();
    assertThat(rule.verdict()).isEqualTo(Verdict.MISSED);
    assertThat(rule.hangsOnStrays()).isTrue();
    assertThat(rule.advice().args().get(1).word()).isEqualTo("8");
    assertThat(score.accepted()).isFalse();
  }

  /** However many noughts slipped in. */
  @ParameterizedTest
  @ValueSource(ints = {440, 1560, 2000})
  void the_further_off_it_is_the_more_it_is_a_slip(int read) {
    PanelScore score = oneCrazy().put("film-after.at8", read + " um").score();
    assertThat(score.film().setAside()).containsExactly(8);
    assertThat(score.film().areas()).isEmpty();
    assertThat(score.findings().get(0).id()).isEqualTo(Finding.STRAY);
    assertThat(score.fitsNoPattern()).isFalse();
    assertThat(score.result("film-even").orElseThrow().verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void what_the_panel_would_be_without_it_is_told() {
    PanelScore good = ClearPanel.good().score();
    PanelScore crazy = ClearPanel.good().put("film-after.at8", "241").score();
    assertThat(good.accepted()).isTrue();
    assertThat(crazy.accepted()).isFalse();
    Phrase told = crazy.findings().get(0).evidence().get(1);
    assertThat(told.key()).isEqualTo("cause.stray.without.accepted");
    assertThat(told.args().get(0).value()).isCloseTo(good.practiceScore(), within(1.0));
  }

  @Test
  void two_of_them_are_told_together_in_the_order_of_their_places() {
    WrittenPanel clear = oneCrazy();
    clear.put("film-after.at4", "40 um");
    Finding strays = clear.score().strays().orElseThrow();
    assertThat(strays.cause().key()).isEqualTo("cause.stray.places");
    assertThat(strays.cause().args().get(0).word()).isEqualTo("4, 8");
    assertThat(strays.evidence().get(0).args().get(0).word()).isEqualTo("4");
  }

  /** More readings or surer ones would settle nothing. */
  @Test
  void a_mean_in_doubt_beside_it_is_told_to_read_it_first() {
    WrittenPanel clear = oneCrazy();
    clear.putAtPlaces("film-after", 90, 89, 91, 90, 88, 90, 91, 40, 90, 89, 90, 91, 89, 90, 90);
    Result film = clear.score().result("film").orElseThrow();
    assertThat(film.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(film.advice().key()).isEqualTo("score.advice.stray-first");
  }

  @Test
  void beside_another_cause_nothing_is_blamed_for_what_hangs_on_it_either() {
    WrittenPanel clear = oneCrazy();
    clear.put("mix-amount.s1", "400").put("mix-amount.s2", "140").put("mix-amount.s3", "100");
    assertThat(clear.score().findings())
        .extracting(Finding::id)
        .startsWith(Finding.STRAY)
        .contains("mix.high")
        .doesNotContain("film.high", "film.doubt", "film-even.low", "film-rule.low");
  }

  @Test
  void what_the_other_readings_miss_as_well_does_not_hang_on_it() {
    WrittenPanel clear = oneCrazy();
    clear.putAtPlaces("film-after", 75, 74, 76, 75, 73, 75, 76, 201, 75, 74, 75, 76, 74, 75, 75);
    PanelScore score = clear.score();
    assertThat(score.film().setAside()).containsExactly(8);
    assertThat(score.result("film-rule").orElseThrow().hangsOnStrays()).isFalse();
    assertThat(score.findings().get(0).id()).isEqualTo("too-little");
  }

  @Test
  void a_cause_that_stands_without_the_stray_reading_stands_before_it() {
    panel.put("gun-pressure", "120 kPa");
    panel.putAtPlaces("film-after", 36, 37, 35, 36, 37, 36, 35, 90, 36, 36, 35, 37, 36, 36, 36);
    assertThat(ids()).contains("too-little", Finding.STRAY);
    assertThat(ids().indexOf(Finding.STRAY)).isGreaterThan(ids().indexOf("too-little"));
  }

  private static WrittenPanel oneCrazy() {
    return WrittenPanel.under("clear/two-coats")
        .putAtPlaces("film-before", 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40)
        .putAtPlaces("film-after", 95, 94, 96, 95, 93, 95, 96, 201, 95, 94, 95, 96, 94, 95, 95);
  }

  /** Each reading can be, and together they are nonsense: found among 1,500 made by chance. */
  @Test
  void readings_too_wild_for_any_sum_fit_no_pattern() {
    double[] before = {118, 118, 110, 71, 85, 112, 115, 74, 60, 111, 60, 113, 81, 70, 115};
    double[] after = {
      218.2, 118, 110, 679.9, 170.5, 199.6, 216.3, 175.1, 162.2, 1561, 60, 183.4, 140, 627.1, 115
    };
    ClearPanel wild = ClearPanel.good();
    for (int i = 0; i < before.length; i++) {
      wild.put("film-before.at" + (i + 1), before[i] + " um");
      wild.put("film-after.at" + (i + 1), after[i] + " um");
    }
    assertThat(wild.score().findings().get(0).id()).isEqualTo(Finding.NO_PATTERN);
  }

  /** Where no stroke explains the film, whoever reads a cause first would mend the wrong thing. */
  @Test
  void that_the_film_fits_no_pattern_stands_before_every_cause() {
    panel
        .put("gun-pressure", "120 kPa")
        .putAtPlaces("film-after", 35, 53, 35, 53, 35, 53, 35, 53, 35, 53, 35, 53, 35, 53, 35);
    assertThat(ids()).startsWith(Finding.NO_PATTERN).contains("pressure.low");
    assertThat(panel.score().fitsNoPattern()).isTrue();
    panel.putAtPlaces("film-after", 36, 37, 35, 36, 37, 36, 35, 37, 36, 36, 35, 37, 36, 36, 36);
    assertThat(panel.score().fitsNoPattern()).isFalse();
  }

  /** Even film under passes half a fan apart: what was written down tells it, and tells it once. */
  @Test
  void steps_too_wide_are_told_once_and_first_by_the_cause_that_has_looked_at_the_film() {
    WrittenPanel clear = WrittenPanel.under("clear/two-coats").put("fan-width", "230 mm");
    for (int coat = 1; coat <= 2; coat++) {
      for (int pass = 2; pass <= 4; pass++) {
        clear.put("pass-spacing.c%d.p%d".formatted(coat, pass), "115 mm");
      }
    }
    // 57 µm everywhere with the scatter of a gauge, made by a computation
    double[] film = {
      58, 58.1, 56.7, 57.9, 58.6, 55.9, 57.7, 58.4, 60, 56.1, 55.3, 56.2, 57.8, 56.1, 56.5
    };
    clear.putAtPlaces("film-before", new double[film.length]);
    clear.putAtPlaces("film-after", film);
    assertThat(clear.score().result("overlap").orElseThrow().verdict()).isEqualTo(Verdict.MISSED);
    assertThat(clear.score().findings())
        .extracting(Finding::id)
        .startsWith("spacing-wide")
        .doesNotContain("overlap.low");
  }

  @Test
  void far_outside_a_cause_of_its_own_is_told() {
    String far =
        "  - {criterion: pressure, side: high, beyond: 100 kPa, cause: Wrong scale., change: Read it.}\n";
    WrittenPanel wide = WrittenPanel.withFindings(far + RULES, PRESSURE, FLUID, FILM);
    assertThat(cause(wide.put("gun-pressure", "279 kPa"))).isEqualTo("It is too high.");
    assertThat(cause(wide.put("gun-pressure", "300 kPa"))).isEqualTo("Wrong scale.");
  }

  private static String cause(WrittenPanel panel) {
    return panel.score().findings().get(0).cause().text();
  }
}
