package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Conformance, guard bands and risks against JCGM 106:2012 and independent programs. */
class ConformanceReferenceTest {
  private static final TargetRange FILM = new TargetRange(50, 70);

  @ParameterizedTest
  @CsvFileSource(resources = "conformance.csv", useHeadersInDisplayName = true)
  void conformance_probability_agrees_with_jcgm_106(
      String name, double value, double u, double least, double most, double probability) {
    TargetRange range = new TargetRange(least, most);
    assertThat(Conformance.probability(Estimate.of(value, u), range))
        .isCloseTo(probability, within(5e-7));
    assertThat(Conformance.consumersRisk(Estimate.of(value, u), range))
        .isCloseTo(1 - probability, within(5e-7));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "guard-quantiles.csv", useHeadersInDisplayName = true)
  void the_guard_band_of_one_limit_is_the_normal_quantile(double sure, double quantile) {
    assertThat(Conformance.guardBand(Estimate.of(60, 2), sure))
        .isCloseTo(2 * quantile, within(1e-6));
  }

  /**
   * One-sided 95 % points of Student's t, handbook tables (from memory): 6.314, 2.920, 2.015, 1.812
   * for 1, 2, 5 and 10 degrees of freedom, 1.645 for the normal distribution.
   */
  @ParameterizedTest
  @CsvSource({"1, 6.314", "2, 2.920", "5, 2.015", "10, 1.812", "Infinity, 1.645"})
  void the_guard_band_is_wider_where_the_uncertainty_rests_on_few_readings(
      double degreesOfFreedom, double quantile) {
    Estimate like = new Estimate(60, 2, degreesOfFreedom);
    assertThat(Conformance.guardBand(like, 0.95)).isCloseTo(2 * quantile, within(1.1e-3));
    assertThat(Conformance.acceptance(TargetRange.atLeast(50), like, 0.95).orElseThrow().least())
        .isCloseTo(50 + 2 * quantile, within(1.1e-3));
  }

  /**
   * JCGM 106:2012, 8.3.3.2 example 1 (a speed limit of 100 km/h, u 2 % of the reading, 99.9 %
   * sure): printed 107 km/h, from memory; 106.59 computed.
   */
  @Test
  void a_driver_is_stopped_at_the_speed_of_the_standard() {
    double band = Conformance.guardBand(Estimate.of(100, 0.02), 0.999);
    assertThat(100 / (1 - band)).isCloseTo(106.59, within(5e-3));
  }

  /** Target 50 to 70 with u 1.5: 52.4675 to 67.5325 at 95 %, 53 to 67 with w = 2u, C_m 3.333. */
  @Test
  void the_acceptance_range_of_a_film_comes_out() {
    TargetRange sure = Conformance.acceptance(FILM, Estimate.of(60, 1.5), 0.95).orElseThrow();
    assertThat(sure.least()).isCloseTo(52.467280, within(1e-6));
    assertThat(sure.most()).isCloseTo(67.532720, within(1e-6));
    assertThat(Conformance.guarded(FILM, 3)).contains(new TargetRange(53, 67));
    assertThat(Conformance.capability(FILM, 1.5)).isCloseTo(20 / 6.0, within(1e-15));
  }

  @Test
  void a_range_too_narrow_for_its_gauge_accepts_nothing() {
    assertThat(Conformance.acceptance(FILM, Estimate.of(60, 10), 0.95)).isEmpty();
    assertThat(Conformance.guarded(FILM, 10.1)).isEmpty();
  }

  @Test
  void one_limit_has_no_capability() {
    assertThatThrownBy(() -> Conformance.capability(TargetRange.atLeast(85), 1))
        .isInstanceOf(MeasureException.class);
  }

  /** JCGM 106:2012, 7.2: prior 60 ± 5, reading 72 ± 3; computed by an independent program. */
  @Test
  void what_such_work_has_been_before_draws_a_reading_towards_it() {
    Estimate both = Conformance.posterior(Estimate.of(60, 5), Estimate.of(72, 3));
    assertThat(both.value()).isCloseTo(68.82353, within(5e-6));
    assertThat(both.standardUncertainty()).isCloseTo(2.572479, within(5e-7));
    assertThat(Conformance.probability(both, FILM)).isCloseTo(0.676283, within(5e-7));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "global-risk.csv", useHeadersInDisplayName = true)
  void global_risks_agree_with_the_computed_table(
      double guardBand, double consumers, double producers) {
    TargetRange target = new TargetRange(1499.8, 1500.2);
    GlobalRisk risk =
        GlobalRisk.of(
            Estimate.of(1500, 0.12),
            0.04,
            target,
            Conformance.guarded(target, guardBand).orElseThrow());
    assertThat(risk.consumers()).isCloseTo(consumers, within(1e-7));
    assertThat(risk.producers()).isCloseTo(producers, within(1e-7));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "false-accept.csv", useHeadersInDisplayName = true)
  void false_accept_at_four_to_one_agrees_with_the_published_values(
      double inTolerance, double perCent) {
    double spread =
        1 / NormalDistribution.of(0, 1).inverseCumulativeProbability((1 + inTolerance) / 2);
    TargetRange target = new TargetRange(-1, 1);
    GlobalRisk risk = GlobalRisk.of(Estimate.of(0, spread), spread / 4, target, target);
    assertThat(100 * risk.consumers()).isCloseTo(perCent, within(1.2e-6));
  }

  @Test
  void a_perfect_gauge_makes_no_wrong_decisions() {
    GlobalRisk risk = GlobalRisk.of(Estimate.of(60, 8), 0, FILM, FILM);
    assertThat(risk).isEqualTo(new GlobalRisk(0, 0));
  }

  /**
   * One limit at the middle of all work: a true value and its reading lie on either side of it in
   * arctan(u / σ) / 2π of all cases (Sheppard 1899, for two normal values of correlation r: 1/4 −
   * arcsin(r) / 2π; from memory).
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 0.01, 1, 100})
  void risks_at_one_limit_are_those_of_the_closed_form_for_any_gauge(double uncertainty) {
    TargetRange atMost = TargetRange.atMost(60);
    TargetRange atLeast = TargetRange.atLeast(60);
    double each = Math.atan(uncertainty) / (2 * Math.PI);

    for (TargetRange range : new TargetRange[] {atMost, atLeast}) {
      GlobalRisk risk = GlobalRisk.of(Estimate.of(60, 1), uncertainty, range, range);
      assertThat(risk.consumers()).isCloseTo(each, within(1e-9));
      assertThat(risk.producers()).isCloseTo(each, within(1e-9));
    }
  }

  /** Q(10) = 7.6199e-24 and Q(6) = 9.8659e-10, handbook tables of the normal tail; from memory. */
  @Test
  void the_probability_far_outside_keeps_its_digits_on_either_side() {
    for (int side : new int[] {-1, 1}) {
      Estimate far = Estimate.of(10 * side, 1);
      TargetRange beyond = side < 0 ? TargetRange.atLeast(0) : TargetRange.atMost(0);
      assertThat(Conformance.probability(far, beyond) / 7.6199e-24).isCloseTo(1, within(1e-5));
      TargetRange band = side < 0 ? new TargetRange(-4, 0) : new TargetRange(0, 4);
      assertThat(Conformance.probability(far, band) / (9.8659e-10 - 7.62e-24))
          .isCloseTo(1, within(1e-5));
    }
  }
}
