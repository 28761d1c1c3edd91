package lapline.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import lapline.Samples;
import lapline.trade.climate.DryingRule.MoistAir;
import lapline.trade.climate.DryingTime.Basis;
import lapline.trade.climate.HeatLamp.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

/** What holds for all air, and what simulation says of the dew point. */
class ClimateProperties {
  private static final int DRAWS = 20_000;

  @Test
  void the_dew_point_never_lies_above_the_air_and_rises_with_warmth_and_damp() {
    Samples.each(
        500,
        chance -> {
          double air = -40 + 90 * chance.nextDouble();
          double humidity = 0.02 + 0.97 * chance.nextDouble();
          double dew = DewPoint.of(air, humidity);
          assertThat(dew).isLessThan(air);
          assertThat(DewPoint.of(air + 1, humidity)).isGreaterThan(dew);
          assertThat(DewPoint.of(air, humidity + 0.01)).isGreaterThan(dew);
        });
  }

  /** At its dew point the air's vapour is saturated: the two formulas are one turned round. */
  @Test
  void vapour_at_the_dew_point_is_saturated() {
    Samples.each(
        500,
        chance -> {
          double air = 40 * chance.nextDouble();
          double humidity = 0.2 + 0.8 * chance.nextDouble();
          double vapour = humidity * DewPoint.saturation(air);
          assertThat(DewPoint.saturation(DewPoint.of(air, humidity)))
              .isCloseTo(vapour, within(vapour * 1e-12));
        });
  }

  @Test
  void a_wetter_bulb_means_damper_air() {
    Samples.each(
        300,
        chance -> {
          double dry = 10 + 20 * chance.nextDouble();
          double wet = dry - 3 * chance.nextDouble() - 0.5;
          assertThat(DewPoint.humidityFrom(dry, wet + 0.3, 101_325))
              .isGreaterThan(DewPoint.humidityFrom(dry, wet, 101_325));
        });
  }

  /** The stated interval of the margin, value ± coverage factor × u, holds the true one. */
  @Test
  void the_dew_margin_lies_in_its_interval_as_often_as_it_says() {
    Samples.each(
        6,
        chance -> {
          double air = 12 + 18 * chance.nextDouble();
          double humidity = 0.4 + 0.4 * chance.nextDouble();
          double panel = air - 3 * chance.nextDouble();
          double truth = panel - DewPoint.of(air, humidity);
          int held = 0;
          for (int i = 0; i < DRAWS; i++) {
            Estimate margin =
                DewPoint.margin(
                    drawn(panel, 0.3, chance),
                    drawn(air, 0.3, chance),
                    drawn(humidity, 0.015, chance));
            double reach =
                Gum.coverageFactor(margin.degreesOfFreedom()) * margin.standardUncertainty();
            held += Math.abs(margin.value() - truth) <= reach ? 1 : 0;
          }
          assertThat(held / (double) DRAWS).isBetween(0.94, 0.96);
        });
  }

  private static Estimate drawn(double truth, double u, RandomGenerator chance) {
    return Estimate.of(truth + u * chance.nextGaussian(), u);
  }

  @Test
  void both_rules_of_pot_life_fall_with_warmth_and_keep_the_sheets_own_figure() {
    Samples.each(
        300,
        chance -> {
          PotLife life =
              new PotLife(Samples.ofAnySize(chance, 0.5, 10), 15 + 10 * chance.nextDouble());
          double t = -10 + 60 * chance.nextDouble();
          assertThat(life.halvedPerTenDegrees(t + 1)).isLessThan(life.halvedPerTenDegrees(t));
          assertThat(life.byActivation(t + 1, 5e4)).isLessThan(life.byActivation(t, 5e4));
          assertThat(life.halvedPerTenDegrees(life.reference()))
              .isCloseTo(life.atReference(), within(1e-12));
          assertThat(life.byActivation(life.reference(), 5e4))
              .isCloseTo(life.atReference(), within(1e-12));
        });
  }

  @Test
  void an_activation_that_doubles_doubles() {
    Samples.each(
        200,
        chance -> {
          double cold = 40 * chance.nextDouble();
          double warm = cold + 1 + 15 * chance.nextDouble();
          double energy = PotLife.activationThatDoubles(cold, warm);
          assertThat(new PotLife(4, cold).byActivation(warm, energy)).isCloseTo(2, within(1e-9));
        });
  }

  @Test
  void rules_of_thumb_go_there_and_back() {
    Samples.each(
        200,
        chance -> {
          DryingTime known = new DryingTime(300, 900, Basis.PRODUCT_CARD);
          double there = 20 + 40 * chance.nextDouble();
          DryingTime back = DryingRule.cure(DryingRule.cure(known, 20, there), there, 20);
          assertThat(back.least()).isCloseTo(300, within(1e-9));
          MoistAir at = new MoistAir(20, 0.5);
          MoistAir now =
              new MoistAir(5 + 30 * chance.nextDouble(), 0.2 + 0.7 * chance.nextDouble());
          DryingTime again = DryingRule.waterFlash(DryingRule.waterFlash(known, at, now), now, at);
          assertThat(again.most()).isCloseTo(900, within(1e-9));
        });
  }

  /** Spells of any lengths at one temperature are one long spell. */
  @Test
  void shares_used_add_up() {
    Samples.each(
        200,
        chance -> {
          List<Spell> spells = new ArrayList<>();
          double all = 0;
          for (int i = 0; i <= chance.nextInt(5); i++) {
            double seconds = 1000 * chance.nextDouble();
            spells.add(new Spell(seconds, 20));
            all += seconds;
          }
          assertThat(Spell.shareUsed(spells, t -> 500)).isCloseTo(all / 500, within(1e-9));
        });
  }

  @Test
  void a_panel_is_never_longer_at_a_higher_temperature_nor_longer_than_watched() {
    Samples.each(
        300,
        chance -> {
          List<Reading> readings = new ArrayList<>();
          double at = 0;
          for (int i = 0; i < 2 + chance.nextInt(8); i++) {
            readings.add(new Reading(at, 20 + 50 * chance.nextDouble()));
            at += 1 + 300 * chance.nextDouble();
          }
          HeatLamp lamp = new HeatLamp(0.6, readings);
          double wanted = 20 + 50 * chance.nextDouble();
          TargetRange time = lamp.timeAt(wanted);
          TargetRange hotter = lamp.timeAt(wanted + 2);
          assertThat(hotter.least()).isLessThanOrEqualTo(time.least());
          assertThat(hotter.most()).isLessThanOrEqualTo(time.most());
          assertThat(time.most()).isLessThanOrEqualTo(lamp.watched() + 1e-9);
        });
  }
}
