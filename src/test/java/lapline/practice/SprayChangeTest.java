package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.SprayPlan.Thing;
import lapline.trade.spray.TransferLoss.Basis;
import lapline.trade.stroke.StrokeFilm;
import org.junit.jupiter.api.Test;

/** Change one thing, and the film follows by arithmetic anybody can check. */
class SprayChangeTest {
  private static final SprayPlan PLAN = new SprayPlan(60e-6, 0.5, 0.25, 0.06, 0.2, 0.1, 0.3, 2);

  private static SprayChange changing(Thing thing, double to) {
    return SprayChange.of(PLAN, thing, to).orElseThrow();
  }

  @Test
  void a_wider_step_thins_the_film_and_lessens_the_overlap() {
    SprayPlan wider = changing(Thing.SPACING, 0.12).then();
    assertThat(wider.wetFilm()).isCloseTo(30e-6, within(1e-12));
    assertThat(PLAN.overlap()).isCloseTo(0.7, within(1e-12));
    assertThat(wider.overlap()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void a_hand_twice_as_quick_leaves_half_the_film() {
    SprayChange quicker = changing(Thing.SPEED, 0.6);
    assertThat(quicker.then().dryFilm()).isCloseTo(24e-6, within(1e-12));
    assertThat(quicker.isOpen()).isFalse();
    assertThat(quicker.basis()).isEqualTo(Basis.DERIVED);
  }

  @Test
  void a_gun_further_off_throws_a_wider_fan_and_loses_paint() {
    SprayChange further = changing(Thing.DISTANCE, 0.15);
    assertThat(further.then().fanWidth()).isCloseTo(0.3, within(1e-12));
    assertThat(further.then().overlap()).isCloseTo(0.8, within(1e-12));
    // half as far again: half of 30, 0 and 60 % of the film
    assertThat(further.then().dryFilm()).isCloseTo(0.85 * 48e-6, within(1e-12));
    assertThat(further.thickest().dryFilm()).isCloseTo(48e-6, within(1e-12));
    assertThat(further.thinnest().dryFilm()).isCloseTo(0.7 * 48e-6, within(1e-12));
    assertThat(further.basis()).isEqualTo(Basis.RULE_OF_THUMB);
  }

  /** The page that sprays one measured panel again and the one that asks for numbers. */
  @Test
  void both_what_if_pages_lose_as_much_paint_from_farther_away() {
    StrokeFilm panel =
        new StrokeFilm(
            0.6,
            0.4,
            57e-6,
            0.06,
            0.2,
            2,
            0,
            0,
            0,
            0,
            List.of(),
            List.of(List.of(new StrokeFilm.Pass(0.2, 1))),
            List.of());
    for (double ratio : new double[] {0.5, 0.8, 1.3, 2}) {
      StrokeFilm again = panel.with(new StrokeFilm.Change(0.06, ratio, 1, 0, 1));
      double asked = changing(Thing.DISTANCE, 0.1 * ratio).then().dryFilm() / PLAN.dryFilm();
      assertThat(again.level() / panel.level()).isCloseTo(asked, within(1e-12));
    }
  }

  @Test
  void a_nearer_gun_lays_more_and_never_all_there_is() {
    SprayChange nearer = changing(Thing.DISTANCE, 0.08);
    assertThat(nearer.then().dryFilm()).isCloseTo(1.06 * 48e-6, within(1e-12));
    assertThat(nearer.thinnest().dryFilm()).isCloseTo(48e-6, within(1e-12));
    assertThat(nearer.thickest().dryFilm()).isCloseTo(1.12 * 48e-6, within(1e-12));
  }

  @Test
  void what_is_only_set_moves_nothing_else() {
    assertThat(changing(Thing.FAN_WIDTH, 0.25).then()).isEqualTo(PLAN.with(Thing.FAN_WIDTH, 0.25));
    assertThat(changing(Thing.COATS, 3).then().dryFilm()).isCloseTo(72e-6, within(1e-12));
  }

  @Test
  void passes_out_of_reach_are_answered_with_nothing() {
    assertThat(SprayChange.of(PLAN, Thing.SPACING, 0.41)).isEmpty();
    assertThat(SprayChange.of(PLAN, Thing.DISTANCE, 0.6)).isPresent();
    assertThat(SprayChange.of(PLAN.with(Thing.SPACING, 0.5), Thing.SPEED, 0.5)).isEmpty();
    assertThat(SprayChange.of(PLAN.with(Thing.FAN_WIDTH, 0.6), Thing.DISTANCE, 0.3)).isEmpty();
  }

  @Test
  void up_to_the_very_ends_of_what_is_in_reach_there_is_an_answer() {
    for (int width = 20; width <= 600; width++) {
      for (double overlap : new double[] {-1, 0.95}) {
        double step = (1 - overlap) * width / 1000;
        SprayPlan wide = PLAN.with(Thing.FAN_WIDTH, width / 1000.0);
        SprayPlan start = wide.with(Thing.SPACING, width / 2000.0);
        if (wide.with(Thing.SPACING, step).isWithinReach()) {
          assertThat(SprayChange.of(start, Thing.SPACING, step)).isPresent();
        }
      }
    }
  }
}
