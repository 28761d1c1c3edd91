package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.MeasureException;
import lapline.trade.spray.PlanChange.Distance;
import lapline.trade.spray.PlanChange.FluidPressure;
import lapline.trade.spray.PlanChange.Speed;
import lapline.trade.spray.PlanChange.ToOverlap;
import lapline.trade.spray.TransferLoss.Basis;
import org.junit.jupiter.api.Test;

/** What happens to film and evenness when one thing is done otherwise. */
class PlanEffectTest {
  private static final MassBalance PAINT = new MassBalance(3e-6, 0.6, 0.4);

  /** A 200 mm parabolic fan at 160 mm, 0.45 m/s, passes half a fan apart. */
  private static final StrokePlan PLAN =
      new StrokePlan(PAINT, new Fan(0.2, 0.16), FanProfile.parabola(), 0.16, 0.45, 0.1);

  private static PlanEffect effect(PlanChange change) {
    return PlanEffect.of(PLAN, change);
  }

  @Test
  void a_hand_twice_as_fast_leaves_half_the_film_and_the_same_evenness() {
    PlanEffect effect = effect(new Speed(0.9));

    assertThat(effect.filmRatio()).isCloseTo(0.5, within(1e-12));
    assertThat(effect.evennessGained()).isCloseTo(0, within(1e-12));
    assertThat(effect.leastAfter()).isEqualTo(effect.mostAfter());
    assertThat(effect.basis()).isEqualTo(Basis.DERIVED);
  }

  /** Closed forms of the parabola: √5/20 at half a fan, √(1/180)/(8/3) at three quarters. */
  @Test
  void from_half_to_three_quarters_overlap_film_doubles_and_evens_out() {
    PlanEffect effect = effect(new ToOverlap(0.75));

    assertThat(effect.filmRatio()).isCloseTo(2, within(1e-9));
    assertThat(effect.before().variation()).isCloseTo(Math.sqrt(5) / 20, within(1e-9));
    assertThat(effect.after().variation())
        .isCloseTo(Math.sqrt(1 / 180.0) / (8 / 3.0), within(1e-9));
    assertThat(effect.evennessGained()).isPositive();
  }

  /** By hand: 25 % further, fan 250 mm, overlap 0.6; λ = 0.4 of the workshop takes 10 %. */
  @Test
  void further_away_the_fan_widens_and_less_arrives_by_the_workshops_own_figure() {
    TransferLoss own = TransferLoss.measured(0.15, 0.6, 0.30, 0.36);
    PlanEffect effect = effect(new Distance(0.2, own));

    assertThat(own.likely()).isCloseTo(0.4, within(1e-12));
    assertThat(effect.overlapBefore()).isCloseTo(0.5, within(1e-12));
    assertThat(effect.overlapAfter()).isCloseTo(0.6, within(1e-12));
    assertThat(effect.filmRatio()).isCloseTo(0.9, within(1e-9));
    assertThat(effect.leastAfter()).isEqualTo(effect.mostAfter());
    assertThat(effect.basis()).isEqualTo(Basis.WORKSHOP);
  }

  @Test
  void without_an_own_figure_the_film_further_away_is_a_band_and_says_so() {
    PlanEffect effect = effect(new Distance(0.24, TransferLoss.assumed()));

    // half as far again: 15 % lost as likely, none to 30 % possible
    assertThat(effect.filmRatio()).isCloseTo(0.85, within(1e-9));
    assertThat(effect.mostAfter() / effect.before().mean()).isCloseTo(1, within(1e-9));
    assertThat(effect.leastAfter() / effect.before().mean()).isCloseTo(0.7, within(1e-9));
    assertThat(effect.basis()).isEqualTo(Basis.RULE_OF_THUMB);
  }

  @Test
  void nearer_more_arrives_but_never_more_than_all() {
    StrokePlan nearlyAll =
        new StrokePlan(
            new MassBalance(3e-6, 0.98, 0.4),
            PLAN.fan(),
            PLAN.profile(),
            PLAN.distance(),
            PLAN.speed(),
            0.04);
    PlanEffect effect = PlanEffect.of(nearlyAll, new Distance(0.1, TransferLoss.assumed()));

    assertThat(effect.filmRatio()).isCloseTo(1 / 0.98, within(1e-9));
    assertThat(effect.leastAfter()).isLessThan(effect.mostAfter());
  }

  @Test
  void four_times_the_pressure_on_the_paint_is_twice_the_film_through_an_orifice() {
    PlanEffect up = effect(new FluidPressure(50_000, 200_000));
    PlanEffect down = effect(new FluidPressure(200_000, 50_000));

    assertThat(up.filmRatio()).isCloseTo(2, within(1e-9));
    assertThat(up.mostAfter() / up.before().mean()).isCloseTo(4, within(1e-9));
    assertThat(up.leastAfter()).isCloseTo(up.after().mean(), within(1e-15));
    assertThat(down.filmRatio()).isCloseTo(0.5, within(1e-9));
    assertThat(down.leastAfter() / down.before().mean()).isCloseTo(0.25, within(1e-9));
    assertThat(down.basis()).isEqualTo(Basis.RULE_OF_THUMB);
  }

  @Test
  void a_gun_so_close_that_strips_stay_bare_beyond_a_fan_is_refused() {
    assertThatThrownBy(() -> effect(new Distance(0.03, TransferLoss.assumed())))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("overlap");
  }

  @Test
  void the_film_of_a_plan_is_the_film_of_its_field_inside_the_coat() {
    Ripple inside = PLAN.coat(0, 21).over(0, 0.6, 0.1, 1.4, 1, 8000);

    assertThat(inside.mean()).isCloseTo(PLAN.dryFilm().mean(), within(1e-9 * 20e-6 + 1e-10));
    assertThat(inside.spread()).isCloseTo(PLAN.dryFilm().spread(), within(1e-9));
  }
}
