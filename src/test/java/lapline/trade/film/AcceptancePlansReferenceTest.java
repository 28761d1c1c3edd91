package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AcceptancePlansReferenceTest {
  private static final double MIL = 25.4e-6;

  private static RestrictionLevel level(int number) {
    return RestrictionLevel.values()[number - 1];
  }

  @ParameterizedTest
  @CsvFileSource(resources = "sspc-pa-2-areas.csv", useHeadersInDisplayName = true)
  void a_surface_is_measured_in_so_many_areas(
      double squareFeet, int areas, int spots, int readings) {
    int found = SspcPa2.areasToMeasure(squareFeet / 10);

    assertThat(found).isEqualTo(areas);
    assertThat(found * SspcPa2.SPOTS_IN_AN_AREA).isEqualTo(spots);
    assertThat(found * SspcPa2.SPOTS_IN_AN_AREA * SspcPa2.READINGS_IN_A_SPOT).isEqualTo(readings);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "sspc-pa-2-limits.csv", useHeadersInDisplayName = true)
  void a_level_sets_the_limits_of_spots_and_areas(
      int number, double spotLeast, Double spotMost, double areaLeast, Double areaMost) {
    RestrictionLevel level = level(number);

    assertThat(level.spotLeast(8 * MIL) / MIL).isCloseTo(spotLeast, within(1e-9));
    assertThat(level.spotMost(12 * MIL) / MIL).satisfies(m -> isLimit(m, spotMost));
    assertThat(areaLeast).isEqualTo(8);
    assertThat(level.areaMost(12 * MIL) / MIL).satisfies(m -> isLimit(m, areaMost));
  }

  private static void isLimit(double found, Double printed) {
    if (printed == null) {
      assertThat(found).isInfinite();
    } else {
      assertThat(found).isCloseTo(printed, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "sspc-pa-2-panel.csv", useHeadersInDisplayName = true)
  void a_panel_passes_from_level_3_on(String readings, int number, boolean accepted) {
    SspcPa2 plan = new SspcPa2(new TargetRange(50e-6, 65e-6), level(number), 1);

    assertThat(plan.judge(List.of(Micrometres.spots(readings))).accepted()).isEqualTo(accepted);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "iso-19840-panel.csv", useHeadersInDisplayName = true)
  void single_readings_are_held_against_the_nominal_film(
      String readings,
      double mean,
      double least,
      double share,
      PlanOutcome.Result result,
      PlanOutcome.Rule broken) {
    PlanOutcome outcome = new Iso19840(60e-6, 180e-6, 2).judge(Micrometres.readings(readings));

    assertThat(outcome.result()).isEqualTo(result);
    assertThat(outcome.broken().stream().map(PlanOutcome.Check::rule))
        .isEqualTo(broken == null ? List.of() : List.of(broken));
    assertThat(found(outcome, PlanOutcome.Rule.MEAN_NOT_BELOW_NOMINAL))
        .isCloseTo(mean * 1e-6, within(1e-15));
    assertThat(found(outcome, PlanOutcome.Rule.READING_NOT_BELOW))
        .isCloseTo(least * 1e-6, within(1e-15));
    assertThat(found(outcome, PlanOutcome.Rule.FEW_BELOW_NOMINAL)).isCloseTo(share, within(1e-12));
  }

  private static double found(PlanOutcome outcome, PlanOutcome.Rule rule) {
    return outcome.checks().stream()
        .filter(c -> c.rule() == rule)
        .findFirst()
        .orElseThrow()
        .found();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "iso-19840-sampling.csv", useHeadersInDisplayName = true)
  void an_area_wants_so_many_readings(double area, int readings, int repeats) {
    assertThat(Iso19840.readingsWanted(area)).isEqualTo(readings);
    assertThat(Iso19840.repeatsAllowed(area)).isEqualTo(repeats);
  }
}
