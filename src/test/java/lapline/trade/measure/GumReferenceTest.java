package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Propagation of uncertainty against worked examples of JCGM 100:2008. */
class GumReferenceTest {

  /** H.1 end gauge: inputs and the printed 32 nm and 16 degrees of freedom from memory. */
  @Test
  void the_end_gauge_of_the_gum_comes_out() {
    Estimate sum =
        Gum.sum(
            List.of(
                new Estimate(0, 25, 18),
                new Estimate(0, 9.7, 25.6),
                new Estimate(0, 2.9, 50),
                new Estimate(0, 16.6, 2)));
    assertThat(sum.standardUncertainty()).isCloseTo(31.671, within(5e-4));
    assertThat(sum.degreesOfFreedom()).isCloseTo(16.76, within(5e-3));
  }

  /**
   * H.2 resistance, reactance and impedance from five simultaneous readings: inputs, correlations
   * and results from memory; R 127.732 Ω, u 0.071 Ω. Its |Z| = V / I needs no phase: 254.260 Ω, u
   * 0.236 Ω.
   */
  @Test
  void the_impedance_of_the_gum_comes_out_with_its_correlation() {
    Estimate volt = Estimate.of(4.9990, 0.0032);
    Estimate ampere = Estimate.of(19.6610e-3, 0.0095e-3);
    double z = volt.value() / ampere.value();
    List<Gum.Part> parts =
        List.of(new Gum.Part(z / volt.value(), volt), new Gum.Part(-z / ampere.value(), ampere));
    Estimate impedance = Gum.combine(z, parts, new double[][] {{1, -0.36}, {-0.36, 1}});
    assertThat(impedance.value()).isCloseTo(254.260, within(5e-4));
    assertThat(impedance.standardUncertainty()).isCloseTo(0.236, within(1.5e-3));
  }

  /**
   * H.2 in full: phase 1.04446 rad, u 0.00075 rad, r(V, I) −0.36, r(V, φ) 0.86, r(I, φ) −0.65;
   * published R 127.732 Ω, u 0.071 Ω, and X 219.847 Ω, u 0.295 Ω (all from memory). The printed
   * uncertainties come from unrounded inputs; from these rounded ones they move by up to 0.0015 Ω.
   */
  @Test
  void resistance_and_reactance_of_the_gum_come_out_with_three_correlations() {
    Estimate volt = Estimate.of(4.9990, 0.0032);
    Estimate ampere = Estimate.of(19.6610e-3, 0.0095e-3);
    Estimate phase = Estimate.of(1.04446, 0.00075);
    double[][] r = {{1, -0.36, 0.86}, {-0.36, 1, -0.65}, {0.86, -0.65, 1}};
    double z = volt.value() / ampere.value();
    double resistance = z * Math.cos(phase.value());
    double reactance = z * Math.sin(phase.value());

    Estimate found = combined(resistance, -reactance, volt, ampere, phase, r);
    assertThat(found.value()).isCloseTo(127.732, within(5e-4));
    assertThat(found.standardUncertainty()).isCloseTo(0.071, within(1.5e-3));
    Estimate other = combined(reactance, resistance, volt, ampere, phase, r);
    assertThat(other.value()).isCloseTo(219.847, within(5e-4));
    assertThat(other.standardUncertainty()).isCloseTo(0.295, within(1.5e-3));
  }

  private static Estimate combined(
      double value,
      double perRadian,
      Estimate volt,
      Estimate ampere,
      Estimate phase,
      double[][] r) {
    return Gum.combine(
        value,
        List.of(
            new Gum.Part(value / volt.value(), volt),
            new Gum.Part(-value / ampere.value(), ampere),
            new Gum.Part(perRadian, phase)),
        r);
  }

  /**
   * A film gauge: five readings with s 1.8 µm, certificate ± 1.5 µm rectangular, zero 0.6 µm, steps
   * of 1 µm; u 1.35696 µm and 32.3 degrees of freedom computed by an independent program.
   */
  @Test
  void the_uncertainty_budget_of_a_film_gauge_adds_up() {
    Estimate mean = new Estimate(62e-6, 1.8e-6 / Math.sqrt(5), 4);
    Estimate budget =
        Gum.combine(
            62e-6,
            List.of(
                new Gum.Part(1, mean),
                new Gum.Part(1, Estimate.of(0, Gum.rectangular(1.5e-6))),
                new Gum.Part(1, Estimate.of(0, 0.6e-6)),
                new Gum.Part(1, Estimate.of(0, Gum.resolution(1e-6)))));
    assertThat(budget.standardUncertainty()).isCloseTo(1.35696e-6, within(5e-12));
    assertThat(budget.degreesOfFreedom()).isCloseTo(32.3, within(0.05));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "coverage.csv", useHeadersInDisplayName = true)
  void coverage_factors_agree_with_the_table_of_the_gum(double degreesOfFreedom, double factor) {
    assertThat(Gum.coverageFactor(degreesOfFreedom)).isCloseTo(factor, within(5.1e-3));
    assertThat(new Estimate(62, 3, degreesOfFreedom).expandedUncertainty())
        .isCloseTo(3 * factor, within(3 * 5.1e-3));
  }

  @Test
  void what_was_kept_without_degrees_of_freedom_is_taken_as_known() {
    Estimate known = Estimate.of(62, 3);
    Estimate few = new Estimate(62, 3, 1.5);
    assertThat(known.keptDegreesOfFreedom()).isNull();
    assertThat(Estimate.of(62, 3, known.keptDegreesOfFreedom())).isEqualTo(known);
    assertThat(Estimate.of(62, 3, few.keptDegreesOfFreedom())).isEqualTo(few);
  }

  @Test
  void one_gauge_read_twice_cancels_in_the_difference() {
    Estimate before = Estimate.of(100e-6, 2e-6);
    Estimate after = Estimate.of(160e-6, 2e-6);
    assertThat(Gum.difference(after, before).standardUncertainty())
        .isCloseTo(Math.sqrt(8) * 1e-6, within(1e-18));
    assertThat(Gum.difference(after, before, 1).standardUncertainty()).isZero();
    assertThat(Gum.difference(after, before, 0.5).standardUncertainty())
        .isCloseTo(2e-6, within(1e-18));
  }

  @Test
  void a_mean_keeps_what_its_gauge_does_wrong_in_every_reading() {
    Estimate mean = Gum.mean(new double[] {60, 62, 64, 62}, 1.5);
    assertThat(mean.value()).isEqualTo(62);
    assertThat(mean.standardUncertainty())
        .isCloseTo(Math.hypot(1.5, Math.sqrt(8 / 3.0) / 2), within(1e-12));
    assertThat(Gum.mean(new double[] {62}, 1.5)).isEqualTo(Estimate.of(62, 1.5));
  }

  @Test
  void correlations_that_are_none_are_refused() {
    List<Gum.Part> two =
        List.of(new Gum.Part(1, Estimate.of(1, 1)), new Gum.Part(1, Estimate.of(1, 1)));
    assertThatThrownBy(() -> Gum.combine(2, two, new double[][] {{1, 0.5}, {0.4, 1}}))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Gum.combine(2, two, new double[][] {{1, 2}, {2, 1}}))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Gum.ratio(Estimate.of(1, 1), Estimate.of(0, 1)))
        .isInstanceOf(MeasureException.class);
  }
}
