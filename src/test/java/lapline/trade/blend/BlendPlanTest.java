package lapline.trade.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;

/** A panel of 600 × 400 mm with a repair of 100 × 100 mm, invented; distances by hand. */
class BlendPlanTest {
  private static final BlendRoom ROOM =
      new BlendRoom(Outline.rectangle(0, 0, 0.6, 0.4), Outline.rectangle(0.2, 0.15, 0.3, 0.25));

  private static Estimate metres(double value) {
    return Estimate.of(value, 0.003);
  }

  /** Primer 20 mm, two coats 30 mm each, 20 mm kept free. */
  private static BlendPlan plan(double sealer) {
    return new BlendPlan(
        ROOM, metres(0.02), metres(sealer), List.of(metres(0.03), metres(0.03)), 0.02);
  }

  @Test
  void each_layer_ends_past_the_one_under_it() {
    BlendPlan plan = plan(0.025);

    assertThat(plan.primerEdge().value()).isEqualTo(0.02);
    assertThat(plan.sealerEdge().value()).isCloseTo(0.045, within(1e-12));
    assertThat(plan.coatEdges()).hasSize(2);
    assertThat(plan.coatEdges().get(0).value()).isCloseTo(0.075, within(1e-12));
    assertThat(plan.reach().value()).isCloseTo(0.105, within(1e-12));
    // four independent steps of 3 mm
    assertThat(plan.reach().standardUncertainty()).isCloseTo(0.006, within(1e-12));
  }

  @Test
  void room_is_what_is_left_beyond_the_last_coat() {
    List<BlendPlan.AtEdge> edges = plan(0.025).edges();

    // lower, right, upper, left: 150, 300, 150, 200 mm from the repair, less 105
    assertThat(edges.get(0).edge().left().value()).isCloseTo(0.045, within(1e-12));
    assertThat(edges.get(1).edge().left().value()).isCloseTo(0.195, within(1e-12));
    assertThat(edges.get(3).edge().left().value()).isCloseTo(0.095, within(1e-12));
    assertThat(edges).allSatisfy(e -> assertThat(e.verdict()).isEqualTo(Verdict.MET));
    assertThat(plan(0.025).hasRoom()).isEqualTo(Verdict.MET);
    assertThat(plan(0.025).neighboursToBlend(Set.of(1, 2, 3, 4))).isEmpty();
  }

  @Test
  void a_panel_without_room_has_its_neighbours_blended_where_there_are_any() {
    BlendPlan wide = plan(0.06);

    // 150 − 140 leaves 10 mm at the lower and upper edge, where 20 are wanted
    assertThat(wide.hasRoom()).isEqualTo(Verdict.MISSED);
    assertThat(wide.neighboursToBlend(Set.of(1, 2, 3, 4)))
        .extracting(e -> e.edge().edge())
        .containsExactly(1, 3);
    assertThat(wide.neighboursToBlend(Set.of(2, 3)))
        .extracting(e -> e.edge().edge())
        .containsExactly(3);
    assertThat(wide.neighboursToBlend(Set.of())).isEmpty();
  }

  @Test
  void an_edge_in_doubt_has_its_neighbour_blended_too() {
    BlendPlan close = plan(0.05);

    // 150 − 130 leaves just the 20 mm that are wanted: an even bet
    assertThat(close.edges().get(0).probability()).isCloseTo(0.5, within(1e-6));
    assertThat(close.hasRoom()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(close.neighboursToBlend(Set.of(1))).hasSize(1);
  }

  @Test
  void a_sealer_costs_its_own_step_and_the_panel_it_makes_colour_cover() {
    BlendPlan.SealerCost cost = plan(0.06).sealerCost();

    assertThat(cost.room()).isEqualTo(metres(0.06));
    assertThat(cost.with()).isEqualTo(Verdict.MISSED);
    assertThat(cost.without()).isEqualTo(Verdict.MET);
    // square with a rounded border of 140 mm less the one of 80 mm, over the panel
    double byHand = (border(0.14) - border(0.08)) / 0.24;
    assertThat(cost.share()).isCloseTo(byHand, within(1e-4));
  }

  private static double border(double reach) {
    return 0.01 + 4 * 0.1 * reach + Math.PI * reach * reach;
  }

  @Test
  void no_sealer_costs_nothing() {
    BlendPlan bare = plan(0.025).withoutSealer();

    assertThat(bare.reach().value()).isCloseTo(0.08, within(1e-12));
    assertThat(bare.sealerEdge()).isEqualTo(bare.primerEdge());
    assertThat(bare.sealerCost().share()).isZero();
    assertThat(bare.sealerCost().room().value()).isZero();
  }

  @Test
  void coats_are_drawn_from_the_innermost_out() {
    List<Outline> coats = plan(0.025).coatOutlines();

    assertThat(coats.get(0).area()).isCloseTo(border(0.075), within(1e-5));
    assertThat(coats.get(1).area()).isCloseTo(border(0.105), within(1e-5));
  }

  @Test
  void clear_goes_to_the_panels_break_on_the_repairs_side() {
    PanelBreak line = new PanelBreak(new Corner(0.45, -0.1), new Corner(0.45, 0.5));

    PanelBreak.Clear clear = line.clear(ROOM, ROOM.coat(plan(0.025).reach().value()));

    assertThat(clear.area().area()).isCloseTo(0.45 * 0.4, within(1e-12));
    assertThat(clear.share()).isCloseTo(0.75, within(1e-12));
    assertThat(clear.coversColour()).isTrue();
  }

  @Test
  void colour_beyond_the_break_takes_the_clear_to_the_panels_edge() {
    PanelBreak line = new PanelBreak(new Corner(0.4, 0), new Corner(0.4, 0.4));

    assertThat(line.clear(ROOM, ROOM.coat(0.105)).coversColour()).isFalse();
    assertThat(line.clear(ROOM, ROOM.coat(0.099)).coversColour()).isTrue();
  }

  @Test
  void a_slanting_break_parts_the_panel_too() {
    PanelBreak line = new PanelBreak(new Corner(0.6, 0.1), new Corner(0.3, 0.4));

    PanelBreak.Clear clear = line.clear(ROOM, ROOM.coat(0.02));

    // a corner of 0.3 × 0.3 cut off
    assertThat(clear.area().area()).isCloseTo(0.24 - 0.045, within(1e-9));
  }
}
