package lapline.trade.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import lapline.Samples;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import org.junit.jupiter.api.Test;

/** What holds for every panel and every blend. */
class BlendProperties {
  private static final int DRAWS = 20_000;

  private static BlendRoom room(RandomGenerator chance) {
    double width = 0.4 + chance.nextDouble();
    double height = 0.4 + chance.nextDouble();
    double x = 0.1 + (width - 0.3) * chance.nextDouble();
    double y = 0.1 + (height - 0.3) * chance.nextDouble();
    return new BlendRoom(
        Outline.rectangle(0, 0, width, height), Outline.rectangle(x, y, x + 0.1, y + 0.1));
  }

  @Test
  void a_coat_that_reaches_farther_covers_more_and_leaves_less() {
    Samples.each(
        100,
        chance -> {
          BlendRoom room = room(chance);
          double reach = 0.3 * chance.nextDouble();
          assertThat(room.shareCovered(reach + 0.01))
              .isGreaterThanOrEqualTo(room.shareCovered(reach));
          assertThat(room.shareCovered(reach)).isBetween(0.0, 1.0);
          for (int i = 0; i < 4; i++) {
            double near = left(room, reach, i);
            assertThat(near - left(room, reach + 0.01, i)).isCloseTo(0.01, within(1e-12));
          }
        });
  }

  private static double left(BlendRoom room, double reach, int edge) {
    return room.toEachEdge(Estimate.of(reach, 0)).get(edge).left().value();
  }

  /** A coat is inside the panel uncut as long as room is left to its nearest edge. */
  @Test
  void room_left_and_the_drawn_coat_agree() {
    Samples.each(
        100,
        chance -> {
          BlendRoom room = room(chance);
          double reach = 0.3 * chance.nextDouble();
          boolean fits = room.least(Estimate.of(reach, 0)).left().value() >= 0;
          double uncut = 0.01 + 0.4 * reach + Math.PI * reach * reach;
          double drawn = room.coat(reach).area();
          if (fits) {
            assertThat(drawn).isCloseTo(uncut, within(uncut * 1e-3));
          } else {
            assertThat(drawn).isLessThan(uncut);
          }
        });
  }

  @Test
  void moving_panel_and_repair_together_changes_nothing() {
    Samples.each(
        100,
        chance -> {
          BlendRoom room = room(chance);
          double dx = 2 * chance.nextDouble() - 1;
          double dy = 2 * chance.nextDouble() - 1;
          BlendRoom moved =
              new BlendRoom(moved(room.panel(), dx, dy), moved(room.primer(), dx, dy));
          Estimate reach = Estimate.of(0.05, 0);
          assertThat(moved.least(reach).left().value())
              .isCloseTo(room.least(reach).left().value(), within(1e-12));
          assertThat(moved.shareCovered(0.1)).isCloseTo(room.shareCovered(0.1), within(1e-9));
        });
  }

  private static Outline moved(Outline outline, double dx, double dy) {
    return new Outline(
        outline.corners().stream().map(c -> new Corner(c.x() + dx, c.y() + dy)).toList());
  }

  @Test
  void steps_add_up_to_reaches_and_a_sealer_moves_all_of_them() {
    Samples.each(
        200,
        chance -> {
          Estimate primer = Estimate.of(0.05 * chance.nextDouble(), 0.002);
          Estimate sealer = Estimate.of(0.05 * chance.nextDouble(), 0.002);
          List<Estimate> coats =
              List.of(
                  Estimate.of(0.05 * chance.nextDouble(), 0.002),
                  Estimate.of(0.05 * chance.nextDouble(), 0.002));
          BlendPlan plan = new BlendPlan(room(chance), primer, sealer, coats, 0.01);
          List<Estimate> bare = plan.withoutSealer().coatEdges();
          for (int i = 0; i < 2; i++) {
            assertThat(plan.coatEdges().get(i).value() - bare.get(i).value())
                .isCloseTo(sealer.value(), within(1e-12));
          }
          assertThat(new StepOut(plan.coatEdges()).steps().get(1).value())
              .isCloseTo(coats.get(1).value(), within(1e-12));
          assertThat(plan.sealerCost().share()).isGreaterThanOrEqualTo(-1e-12);
        });
  }

  @Test
  void a_break_parts_the_panel_without_loss() {
    Samples.each(
        100,
        chance -> {
          BlendRoom room = room(chance);
          double right = room.panel().corners().get(1).x();
          double at = room.primer().corners().get(1).x() + 0.01;
          if (at < right - 0.01) {
            PanelBreak line = new PanelBreak(new Corner(at, -1), new Corner(at, 3));
            PanelBreak.Clear clear = line.clear(room, room.primer());
            assertThat(clear.share()).isCloseTo(at / right, within(1e-9));
            assertThat(clear.coversColour()).isTrue();
          }
        });
  }

  /** The stated interval of the room left holds the true room. */
  @Test
  void room_lies_in_its_interval_as_often_as_it_says() {
    Samples.each(
        4,
        chance -> {
          BlendRoom room =
              new BlendRoom(
                  Outline.rectangle(0, 0, 0.6, 0.4), Outline.rectangle(0.2, 0.15, 0.3, 0.25));
          int held = 0;
          for (int i = 0; i < DRAWS; i++) {
            StepOut read =
                new StepOut(List.of(drawn(0.04, chance), drawn(0.08, chance), drawn(0.1, chance)));
            held += covers(read.steps().get(2), 0.02) ? 1 : 0;
          }
          assertThat(held / (double) DRAWS).isBetween(0.94, 0.96);
          Estimate left = room.least(drawn(0.1, chance)).left();
          assertThat(left.standardUncertainty()).isEqualTo(0.002);
        });
  }

  private static Estimate drawn(double truth, RandomGenerator chance) {
    return Estimate.of(truth + 0.002 * chance.nextGaussian(), 0.002);
  }

  private static boolean covers(Estimate e, double truth) {
    double reach = Gum.coverageFactor(e.degreesOfFreedom()) * e.standardUncertainty();
    return Math.abs(e.value() - truth) <= reach;
  }
}
