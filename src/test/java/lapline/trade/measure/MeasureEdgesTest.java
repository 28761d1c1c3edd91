package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Propagation and conformance by hand, and where a rule begins to hold. */
class MeasureEdgesTest {
  private static final Estimate A = Estimate.of(100, 2);
  private static final Estimate B = Estimate.of(60, 1);

  private static void agree(Estimate found, double value, double u) {
    assertThat(found.value()).isCloseTo(value, within(1e-9));
    assertThat(found.standardUncertainty()).isCloseTo(u, within(1e-9));
  }

  @Test
  void the_rules_of_propagation_come_out_by_hand() {
    agree(Gum.difference(A, B), 40, Math.sqrt(5));
    agree(Gum.difference(A, B, 0.5), 40, Math.sqrt(4 + 1 - 2 * 0.5 * 2 * 1));
    agree(Gum.difference(A, B, -1), 40, 3);
    agree(Gum.sum(List.of(A, B, B)), 220, Math.sqrt(6));
    agree(Gum.sum(List.of()), 0, 0);
    // 60 · 2 and 100 · 1
    agree(Gum.product(A, B), 6000, Math.hypot(120, 100));
    // relative 2 % and 1/60
    agree(Gum.ratio(A, B), 100 / 60.0, 100 / 60.0 * Math.hypot(0.02, 1 / 60.0));
    agree(Gum.scale(-3, A), -300, 6);
    agree(Gum.linear(new double[] {2, -3}, List.of(A, B)), 20, 5);
  }

  @Test
  void half_widths_and_steps_become_standard_uncertainties() {
    assertThat(Gum.rectangular(3)).isCloseTo(Math.sqrt(3), within(1e-12));
    assertThat(Gum.triangular(6)).isCloseTo(Math.sqrt(6), within(1e-12));
    assertThat(Gum.resolution(12)).isCloseTo(Math.sqrt(12), within(1e-12));
  }

  @Test
  void two_readings_have_one_degree_of_freedom_and_one_has_its_instruments() {
    assertThat(Gum.mean(new double[] {60, 62}, 0)).isEqualTo(new Estimate(61, 1, 1));
    assertThat(Gum.mean(new double[] {60, 62, 64, 66}, 0).degreesOfFreedom())
        .isCloseTo(3, within(1e-12));
    assertThat(Gum.mean(new double[] {60}, 2)).isEqualTo(Estimate.of(60, 2));
    assertThat(Gum.mean(new double[] {60, 60}, 0).degreesOfFreedom()).isInfinite();
  }

  @Test
  void degrees_of_freedom_follow_the_part_that_weighs() {
    Estimate few = new Estimate(10, 3, 4);
    Estimate certain = Estimate.of(10, 4);

    // (9 + 16)² / (81 / 4)
    assertThat(Gum.sum(List.of(few, certain)).degreesOfFreedom())
        .isCloseTo(625 / 20.25, within(1e-9));
    assertThat(Gum.difference(few, certain, 0.3).degreesOfFreedom()).isEqualTo(4);
    assertThat(Gum.difference(certain, few, 0.3).degreesOfFreedom()).isEqualTo(4);
    assertThat(Gum.difference(new Estimate(1, 0, 3), new Estimate(2, 0, 5)).degreesOfFreedom())
        .isInfinite();
    assertThat(Gum.scale(2, few).degreesOfFreedom()).isEqualTo(4);
  }

  /** Without uncertainty a value conforms or it does not; on a limit it does. */
  @ParameterizedTest
  @CsvSource({"50, 1", "70, 1", "60, 1", "49.999, 0", "70.001, 0"})
  void a_value_known_exactly_conforms_or_not(double value, double probability) {
    TargetRange film = new TargetRange(50, 70);
    Estimate exact = Estimate.of(value, 0);

    assertThat(Conformance.probability(exact, film)).isEqualTo(probability);
    assertThat(Conformance.producersRisk(exact, film)).isEqualTo(probability);
    assertThat(Conformance.consumersRisk(exact, film)).isEqualTo(1 - probability);
    assertThat(film.contains(value)).isEqualTo(probability == 1);
  }

  /** Limits that both bite; ends by scipy's root finder, 1e-8. */
  @ParameterizedTest
  @CsvSource({
    "50, 56, 1.5, 0.95, 52.69431908",
    "50, 55, 1, 0.9, 51.28212416",
    "0, 4, 1, 0.95, 1.79621272"
  })
  void a_range_a_few_u_wide_accepts_less_than_one_limit_would(
      double least, double most, double u, double sure, double from) {
    TargetRange accepted =
        Conformance.acceptance(new TargetRange(least, most), Estimate.of(0, u), sure).orElseThrow();

    assertThat(accepted.least()).isCloseTo(from, within(2e-8));
    assertThat(accepted.most()).isCloseTo(least + most - from, within(2e-8));
  }

  @Test
  void one_limit_is_guarded_alone_and_an_exact_gauge_needs_no_guard() {
    Estimate gauge = Estimate.of(60, 1.5);
    double band = Conformance.guardBand(gauge, 0.95);
    TargetRange film = new TargetRange(50, 70);

    assertThat(Conformance.acceptance(TargetRange.atLeast(50), gauge, 0.95))
        .contains(TargetRange.atLeast(50 + band));
    assertThat(Conformance.acceptance(TargetRange.atMost(70), gauge, 0.95))
        .contains(TargetRange.atMost(70 - band));
    assertThat(Conformance.acceptance(film, Estimate.of(60, 0), 0.95)).contains(film);
    assertThat(Conformance.guarded(film, 10)).contains(new TargetRange(60, 60));
    assertThat(Conformance.guarded(film, -2)).contains(new TargetRange(48, 72));
  }

  @ParameterizedTest
  @CsvSource({"49, -1", "50, 0", "60, 0", "70, 0", "72, 2", "NaN, 0"})
  void a_value_outside_is_so_far_below_or_above(double value, double by) {
    assertThat(new TargetRange(50, 70).outsideBy(value)).isEqualTo(by);
  }

  @Test
  void a_range_has_the_limits_it_was_given() {
    assertThat(TargetRange.atLeast(5).hasLeast()).isTrue();
    assertThat(TargetRange.atLeast(5).hasMost()).isFalse();
    assertThat(TargetRange.atMost(5).hasLeast()).isFalse();
    assertThat(TargetRange.atMost(5).hasMost()).isTrue();
    assertThat(TargetRange.atMost(5).contains(Double.NaN)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"0.95, MET", "0.9499, DOUBTFUL", "0.0501, DOUBTFUL", "0.05, MISSED", "0, MISSED"})
  void a_verdict_is_sure_from_95_per_cent_on_either_side(double probability, Verdict verdict) {
    // 1 − 0.95 is a little more than 0.05 in binary numbers, which is on the side of 'missed'
    assertThat(Verdict.of(probability)).isEqualTo(verdict);
  }

  /** All scatter: Student's n − 1; all instrument: known. In between by hand. */
  @Test
  void few_readings_have_their_own_degrees_of_freedom_as_far_as_they_scatter() {
    assertThat(Gum.mean(60, 2, 3, 0).degreesOfFreedom()).isEqualTo(2);
    assertThat(Gum.mean(60, 0, 3, 1).degreesOfFreedom()).isInfinite();
    assertThat(Gum.mean(60, 0, 3, 0).standardUncertainty()).isZero();
    // half of the variance each: 2 (s + 0.12 · 0.5) / s, s = 0.5 ^ 3.86
    assertThat(Gum.mean(60, Math.sqrt(3), 3, 1).degreesOfFreedom()).isCloseTo(3.7425, within(1e-4));
    // six are those of Welch and Satterthwaite: 5 · 2²
    assertThat(Gum.mean(60, Math.sqrt(6), 6, 1).degreesOfFreedom()).isCloseTo(20, within(1e-9));
  }
}
