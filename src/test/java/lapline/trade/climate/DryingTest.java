package lapline.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.climate.DryingRule.MoistAir;
import lapline.trade.climate.DryingTime.Basis;
import lapline.trade.climate.HeatLamp.Reading;
import lapline.trade.climate.SprayAir.Check;
import lapline.trade.climate.SprayAir.Limit;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;

/** Cards with invented figures. */
class DryingTest {
  private static final DryingCard FLASH =
      DryingCard.of(
          "Invented base, sheet of March",
          List.of(
              new DryingBand(15, 20, 480, 900),
              new DryingBand(20, 25, 300, Double.POSITIVE_INFINITY)));

  @Test
  void a_card_gives_its_own_figures_and_says_that_they_are_its_own() {
    assertThat(FLASH.at(18)).contains(new DryingTime(480, 900, Basis.PRODUCT_CARD));
    assertThat(FLASH.at(20).orElseThrow().least()).isEqualTo(300);
    assertThat(FLASH.at(25).orElseThrow().window().hasMost()).isFalse();
    assertThat(FLASH.at(18).orElseThrow().window()).isEqualTo(new TargetRange(480, 900));
  }

  /** 2.5 standard deviations to either end of the band: 98.758 %, handbook tables; from memory. */
  @Test
  void how_surely_a_temperature_lies_in_its_band_follows_from_its_error() {
    assertThat(FLASH.bands().place(15)).isEqualTo(TemperatureBands.Place.INSIDE);
    assertThat(FLASH.bands().sureness(Estimate.of(17.5, 1))).isCloseTo(0.98758, within(5e-6));
  }

  /** By hand: half of 300 s at 20 °C, and a quarter of 120 s at 30 °C. */
  @Test
  void spells_at_several_temperatures_add_up_to_the_share_of_the_whole() {
    List<Spell> spells = List.of(new Spell(150, 20), new Spell(30, 30));

    assertThat(Spell.shareUsed(spells, t -> t < 25 ? 300 : 120)).isCloseTo(0.75, within(1e-12));
  }

  @Test
  void a_card_says_nothing_of_other_temperatures() {
    assertThat(FLASH.at(14.9)).isEmpty();
    assertThat(FLASH.at(25.1)).isEmpty();
    assertThat(FLASH.bands().place(14.9)).isEqualTo(TemperatureBands.Place.COLDER_THAN_ALL);
    assertThat(FLASH.bands().place(25.1)).isEqualTo(TemperatureBands.Place.WARMER_THAN_ALL);
    assertThat(FLASH.bands().place(25)).isEqualTo(TemperatureBands.Place.INSIDE);
    assertThat(FLASH.bands().sureness(Estimate.of(14.9, 0.5))).isZero();
  }

  /** The rule of thumb published for pot lives (4 h at 23 °C are 2 h at 33 °C), on a cure. */
  @Test
  void a_cure_carried_to_another_temperature_is_a_rule_of_thumb() {
    DryingTime known = new DryingTime(1800, 3600, Basis.PRODUCT_CARD);

    assertThat(DryingRule.cure(known, 60, 50))
        .isEqualTo(new DryingTime(3600, 7200, Basis.RULE_OF_THUMB));
    assertThat(DryingRule.cure(known, 60, 70))
        .isEqualTo(new DryingTime(900, 1800, Basis.RULE_OF_THUMB));
    assertThat(DryingRule.cure(known, 60, 60).basis()).isEqualTo(Basis.RULE_OF_THUMB);
  }

  /** Closed form: at one temperature only the room left for water counts, 0.5 against 0.2. */
  @Test
  void damp_air_dries_water_as_much_slower_as_it_has_less_room() {
    DryingTime known = new DryingTime(300, 600, Basis.PRODUCT_CARD);

    DryingTime damp = DryingRule.waterFlash(known, new MoistAir(20, 0.5), new MoistAir(20, 0.8));

    assertThat(damp.least()).isCloseTo(750, within(1e-9));
    assertThat(damp.most()).isCloseTo(1500, within(1e-9));
    assertThat(damp.basis()).isEqualTo(Basis.RULE_OF_THUMB);
    assertThat(new MoistAir(20, 0.5).dryingPower())
        .isCloseTo(DewPoint.saturation(20) / 2, within(1e-9));
  }

  @Test
  void good_air_keeps_all_four_limits() {
    List<Check> checks =
        SprayAir.USUAL.checks(Estimate.of(21, 0.5), Estimate.of(20, 0.5), Estimate.of(0.55, 0.02));

    assertThat(checks).extracting(Check::limit).containsExactly(Limit.values());
    assertThat(checks).allSatisfy(c -> assertThat(c.verdict()).isEqualTo(Verdict.MET));
  }

  @Test
  void the_limit_kept_least_surely_is_named() {
    Check cold =
        SprayAir.USUAL.leastSure(Estimate.of(16, 0.3), Estimate.of(13, 0.3), Estimate.of(0.71, 0));

    // the published example: 16 °C and 71 %, substrate 13 °C: margin 2 K, not acceptable
    assertThat(cold.limit()).isEqualTo(Limit.DEW_MARGIN);
    assertThat(cold.found().value()).isCloseTo(2.26, within(0.01));
    assertThat(cold.range()).isEqualTo(TargetRange.atLeast(3));
    assertThat(cold.verdict()).isNotEqualTo(Verdict.MET);
  }

  @Test
  void the_usual_limits_are_the_usual_ones() {
    Estimate fair = Estimate.of(20, 0);
    assertThat(verdicts(fair, fair, 0.85).get(2)).isEqualTo(Verdict.MET);
    assertThat(verdicts(fair, fair, 0.851).get(2)).isEqualTo(Verdict.MISSED);
    assertThat(verdicts(Estimate.of(10, 0), fair, 0.5).get(0)).isEqualTo(Verdict.MET);
    assertThat(verdicts(Estimate.of(9.9, 0), fair, 0.5).get(0)).isEqualTo(Verdict.MISSED);
    assertThat(verdicts(Estimate.of(35.1, 0), fair, 0.2).get(0)).isEqualTo(Verdict.MISSED);
    assertThat(verdicts(fair, Estimate.of(35, 0), 0.5).get(1)).isEqualTo(Verdict.MET);
    assertThat(verdicts(fair, Estimate.of(35.1, 0), 0.5).get(1)).isEqualTo(Verdict.MISSED);
    assertThat(verdicts(fair, Estimate.of(9.9, 0), 0.3).get(1)).isEqualTo(Verdict.MISSED);
  }

  private static List<Verdict> verdicts(Estimate air, Estimate panel, double humidity) {
    return SprayAir.USUAL.checks(air, panel, Estimate.of(humidity, 0)).stream()
        .map(Check::verdict)
        .toList();
  }

  @Test
  void a_lamp_claims_what_was_read_and_no_more() {
    HeatLamp lamp =
        new HeatLamp(
            0.8,
            List.of(
                new Reading(0, 22),
                new Reading(300, 55),
                new Reading(600, 62),
                new Reading(1200, 61),
                new Reading(1500, 50)));

    assertThat(lamp.watched()).isEqualTo(1500);
    assertThat(lamp.warmestRead()).isEqualTo(62);
    // surely between the two readings above 60; perhaps from the one before to the one after
    assertThat(lamp.timeAt(60)).isEqualTo(new TargetRange(600, 1200));
    assertThat(lamp.timeAt(61)).isEqualTo(new TargetRange(600, 1200));
    assertThat(lamp.timeAt(62)).isEqualTo(new TargetRange(0, 900));
    assertThat(lamp.timeAt(70)).isEqualTo(new TargetRange(0, 0));
    assertThat(lamp.timeAt(20)).isEqualTo(new TargetRange(1500, 1500));
  }

  @Test
  void a_lamp_too_near_or_a_panel_too_warm_is_outside_the_sheet() {
    HeatLamp lamp = new HeatLamp(0.8, List.of(new Reading(100, 62)));
    TargetRange sheet = new TargetRange(0.7, 0.9);

    assertThat(lamp.within(sheet, 62)).isTrue();
    assertThat(lamp.within(sheet, 61.9)).isFalse();
    assertThat(lamp.within(new TargetRange(0.9, 1.1), 80)).isFalse();
    assertThat(lamp.watched()).isZero();
    assertThat(lamp.timeAt(50)).isEqualTo(new TargetRange(0, 0));
  }
}
