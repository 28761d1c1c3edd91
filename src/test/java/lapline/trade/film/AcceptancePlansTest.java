package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.film.PlanOutcome.Result;
import lapline.trade.film.PlanOutcome.Rule;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class AcceptancePlansTest {
  private static final SspcPa2 CLEAR = SspcPa2.ofPanel(new TargetRange(50e-6, 65e-6));

  private static PlanOutcome clear(String spots) {
    return CLEAR.judge(List.of(Micrometres.spots(spots)));
  }

  @Test
  void spots_of_two_readings_are_too_few() {
    PlanOutcome outcome = clear("55 56|55 56|55 56|55 56|55 56");

    assertThat(outcome.result()).isEqualTo(Result.TOO_FEW_READINGS);
    assertThat(outcome.broken()).extracting("rule").containsExactly(Rule.SPOT_READINGS_ENOUGH);
  }

  @Test
  void four_spots_are_too_few() {
    assertThat(clear("55 56 57|55 56 57|55 56 57|55 56 57").broken())
        .extracting("rule")
        .containsExactly(Rule.SPOTS_ENOUGH);
  }

  @Test
  void nothing_read_is_too_few_and_no_fault() {
    assertThat(CLEAR.judge(List.of()).result()).isEqualTo(Result.TOO_FEW_READINGS);
  }

  @Test
  void a_spot_on_80_per_cent_of_the_least_keeps_its_limit() {
    assertThat(clear("40 40 40|60 60 60|60 60 60|60 60 60|60 60 60").accepted()).isTrue();
  }

  @Test
  void a_thin_spot_is_named() {
    PlanOutcome outcome = clear("60 60 60|60 60 60|39 39 39|60 60 60|60 60 60");

    assertThat(outcome.broken()).hasSize(1);
    assertThat(outcome.broken().get(0).rule()).isEqualTo(Rule.SPOT_NOT_BELOW);
    assertThat(outcome.broken().get(0).spot()).isEqualTo(3);
  }

  @Test
  void a_single_wild_reading_is_not_judged() {
    assertThat(clear("20 70 75|60 60 60|60 60 60|60 60 60|60 60 60").accepted()).isTrue();
  }

  @Test
  void the_mean_of_an_area_has_no_allowance() {
    PlanOutcome outcome = clear("49 49 49|49 49 49|49 49 49|49 49 49|50 50 50");

    assertThat(outcome.broken()).extracting("rule").containsExactly(Rule.AREA_NOT_BELOW);
  }

  @Test
  void a_base_coat_is_outside_the_scope_of_iso_19840() {
    PlanOutcome outcome = Iso19840.ofPanel(15e-6).judge(Micrometres.readings("15 16 17 15 16"));

    assertThat(outcome.result()).isEqualTo(Result.OUT_OF_SCOPE);
  }

  @Test
  void each_plan_states_what_it_was_written_for() {
    assertThat(PlanOutcome.Plan.ISO_19840.scope())
        .contains(
            PlanOutcome.ScopeNote.WRITTEN_FOR_BLASTED_STEEL,
            PlanOutcome.ScopeNote.NOMINAL_FROM_40_MICROMETRES);
    assertThat(PlanOutcome.Plan.values()).allSatisfy(p -> assertThat(p.scope()).isNotEmpty());
  }

  @Test
  void a_nominal_film_of_40_micrometres_is_within_it() {
    assertThat(Iso19840.ofPanel(40e-6).judge(Micrometres.readings("41 42 43 44 45")).result())
        .isEqualTo(Result.ACCEPTED);
  }

  @Test
  void four_readings_on_a_panel_are_too_few() {
    assertThat(Iso19840.ofPanel(60e-6).judge(Micrometres.readings("61 62 63 64")).result())
        .isEqualTo(Result.TOO_FEW_READINGS);
  }

  @Test
  void an_unknown_profile_takes_25_micrometres_off_each_reading() {
    FilmReadings readings = Micrometres.readings("85 86 87 88 89");

    assertThat(readings.less(Iso19840.Profile.UNKNOWN.correction()).least() * 1e6)
        .isCloseTo(60, within(1e-9));
  }

  @Test
  void a_largest_film_below_nominal_is_refused() {
    assertThatThrownBy(() -> new Iso19840(60e-6, 50e-6, 1))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("most");
  }

  @Test
  void one_specified_value_stands_for_20_per_cent_either_way() {
    TargetRange range = SspcPa2.aroundOneValue(3);

    assertThat(range.least()).isCloseTo(2.4, within(1e-12));
    assertThat(range.most()).isCloseTo(3.6, within(1e-12));
  }

  /** Of two spots alike the first one counts. */
  @Test
  void the_thinnest_and_the_thickest_spot_and_area_are_named() {
    SspcPa2 plan = new SspcPa2(new TargetRange(50e-6, 65e-6), RestrictionLevel.LEVEL_3, 20);
    PlanOutcome outcome =
        plan.judge(
            List.of(
                Micrometres.spots("60 60 60|55 55 55|70 70 70|60 60 60|60 60 60"),
                Micrometres.spots("39 39 39|60 60 60|60 60 60|99 99 99|99 99 99")));

    assertThat(found(outcome, Rule.SPOT_NOT_BELOW)).isEqualTo("39 in 2.1");
    assertThat(found(outcome, Rule.SPOT_NOT_ABOVE)).isEqualTo("99 in 2.4");
    assertThat(found(outcome, Rule.AREA_NOT_BELOW)).isEqualTo("61 in 1.0");
    assertThat(found(outcome, Rule.AREA_NOT_ABOVE)).isEqualTo("71 in 2.0");
  }

  @Test
  void a_single_reading_that_breaks_a_limit_is_named() {
    PlanOutcome outcome =
        Iso19840.ofPanel(60e-6).judge(Micrometres.readings("62 181 47 62 62 62 62 62 62 62"));

    assertThat(found(outcome, Rule.READING_NOT_BELOW)).isEqualTo("47 in 0.3");
    assertThat(found(outcome, Rule.READING_NOT_ABOVE)).isEqualTo("181 in 0.2");
  }

  /** Common where nothing else is specified. */
  @Test
  void the_largest_film_is_three_times_nominal_where_none_is_given() {
    Iso19840 plan = Iso19840.ofPanel(60e-6);

    assertThat(plan.judge(Micrometres.readings("60 62 65 62 180")).accepted()).isTrue();
    assertThat(plan.judge(Micrometres.readings("60 62 65 62 181")).broken())
        .extracting("rule")
        .containsExactly(Rule.READING_NOT_ABOVE);
  }

  private static String found(PlanOutcome outcome, Rule rule) {
    PlanOutcome.Check check =
        outcome.checks().stream().filter(c -> c.rule() == rule).findFirst().orElseThrow();
    return Math.round(check.found() * 1e6) + " in " + check.area() + "." + check.spot();
  }
}
