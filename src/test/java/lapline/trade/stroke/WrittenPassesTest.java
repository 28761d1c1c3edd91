package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;

/** How the passes may lie by what was written down; heights by hand. */
class WrittenPassesTest {
  private static final Estimate FAN = Estimate.of(0.2, 0.008);

  private static WrittenPasses passes(List<Map<Integer, Estimate>> steps) {
    return new WrittenPasses(0.6, 0.4, FAN, 0.06, steps);
  }

  private static List<PassPlan> plans(List<Map<Integer, Estimate>> steps, double leastOverlap) {
    return passes(steps).record(leastOverlap, Optional.empty()).ways().stream()
        .map(StrokeRecord.Way::plan)
        .toList();
  }

  private static Map<Integer, Estimate> steps(double second, double third) {
    return Map.of(2, Estimate.of(second, 0.003), 3, Estimate.of(third, 0.003));
  }

  /** The first 0.4 of the usual step, 60 mm, below the edge, or anywhere near there. */
  @Test
  void written_steps_go_down_from_the_upper_edge_and_on_evenly_beyond_both_edges() {
    List<PassPlan> plans = plans(List.of(steps(0.065, 0.055)), 0.5);
    assertThat(plans).hasSize(1);
    List<Double> lines = plans.get(0).coats().get(0).centrelines();
    assertThat(lines).isSorted();
    for (double there : new double[] {0.376, 0.311, 0.256, 0.196, 0.436, 0.496, -0.104}) {
      assertThat(lines).anySatisfy(y -> assertThat(y).isCloseTo(there, within(1e-9)));
    }
    assertThat(lines.get(0)).isBetween(-0.16 - 0.06, -0.1);
    assertThat(plans.get(0).coats().get(0).each()).contains(0.003, PassPlan.Coat.STEADY);
  }

  @Test
  void where_the_first_pass_was_written_down_the_steps_go_on_from_there() {
    Map<Integer, Estimate> coat =
        Map.of(
            1, Estimate.of(0.03, 0.005),
            2, Estimate.of(0.065, 0.003),
            3, Estimate.of(0.055, 0.003));
    PassPlan.Coat lies = plans(List.of(coat), 0.5).get(0).coats().get(0);
    for (double there : new double[] {0.43, 0.37, 0.305, 0.25, 0.19}) {
      assertThat(lies.centrelines()).anySatisfy(y -> assertThat(y).isCloseTo(there, within(1e-9)));
    }
    assertThat(lies.shift()).isEqualTo(0.005);
    assertThat(lies.centrelines().get(lies.centrelines().size() - 1)).isGreaterThan(0.4 + 0.1);
  }

  /** Above the edge by 20 mm; and the one that was meant as well as the others begin there. */
  @Test
  void and_even_ones_too_where_no_step_was_written() {
    Map<Integer, Estimate> coat = Map.of(1, Estimate.of(-0.02, 0.005));
    WrittenPasses passes = passes(List.of(coat));
    assertThat(passes.anyWritten()).isFalse();
    for (PassPlan plan : plans(List.of(coat), 0.6)) {
      PassPlan.Coat lies = plan.coats().get(0);
      assertThat(lies.shift()).isEqualTo(0.005);
      assertThat(lies.centrelines()).anySatisfy(y -> assertThat(y).isCloseTo(0.42, within(1e-9)));
    }
  }

  @Test
  void a_first_pass_off_the_panel_by_more_than_its_height_is_refused() {
    assertThatThrownBy(() -> passes(List.of(Map.of(1, Estimate.of(0.5, 0.005)))))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("first pass");
    assertThatThrownBy(() -> passes(List.of(Map.of(1, Estimate.of(0.1, 0)))))
        .hasMessageContaining("first pass uncertainty");
  }

  @Test
  void uneven_steps_may_have_been_made_upwards_too() {
    List<PassPlan> plans = plans(List.of(steps(0.09, 0.05)), 0);
    assertThat(plans).hasSize(2);
    assertThat(plans.get(0).coats().get(0).centrelines())
        .anySatisfy(y -> assertThat(y).isCloseTo(0.4 - 0.028 - 0.09, within(1e-9)));
    assertThat(plans.get(1).coats().get(0).centrelines())
        .anySatisfy(y -> assertThat(y).isCloseTo(0.028 + 0.09, within(1e-9)));
  }

  @Test
  void steps_that_are_too_wide_compete_with_those_that_were_meant() {
    List<PassPlan> plans = plans(List.of(steps(0.12, 0.12)), 0.6);
    assertThat(plans).hasSize(2);
    assertThat(plans.get(1).meanStep()).isCloseTo(0.06, within(1e-9));
  }

  @Test
  void and_hardly_anybody_writes_down_what_was_not_measured() {
    StrokeRecord record = passes(List.of(steps(0.12, 0.12))).record(0.6, Optional.empty());
    assertThat(record.stepsWritten()).isTrue();
    assertThat(record.ways().get(1).weight()).isLessThan(record.ways().get(0).weight() / 20);
  }

  @Test
  void one_step_that_went_wrong_says_nothing_of_those_that_nobody_wrote_down() {
    Map<Integer, Estimate> coat =
        Map.of(
            2, Estimate.of(0.06, 0.003),
            3, Estimate.of(0.12, 0.003),
            4, Estimate.of(0.06, 0.003));
    List<Double> lines = plans(List.of(coat), 0).get(0).coats().get(0).centrelines();
    assertThat(lines.get(1) - lines.get(0)).isCloseTo(0.06, within(1e-9));
  }

  /** Steps of 60, 90 and 60 mm over the panel; beyond its edges those that are usual. */
  @Test
  void the_step_over_the_panel_leaves_out_what_nobody_measured() {
    Map<Integer, Estimate> coat =
        Map.of(
            2, Estimate.of(0.06, 0.003),
            3, Estimate.of(0.09, 0.003),
            4, Estimate.of(0.06, 0.003));
    PassPlan plan = plans(List.of(coat), 0).get(0);
    int[] over = plan.coats().get(0).over(0.4);
    List<Double> lines = plan.coats().get(0).centrelines();

    assertThat(lines.get(over[0])).isBetween(0.0, 0.06);
    assertThat(lines.get(over[1])).isCloseTo(0.4 - 0.4 * 0.06, within(1e-9));
    assertThat(plan.stepOverPanel())
        .isCloseTo((lines.get(over[1]) - lines.get(over[0])) / (over[1] - over[0]), within(1e-9))
        .isGreaterThan(plan.meanStep());
  }

  /** Those over it alone count for the step by chance, and they share it. */
  @Test
  void chance_beyond_the_panel_does_not_count_for_the_step_over_it() {
    PassPlan plan = plans(List.of(Map.of()), 0).get(0);
    int[] over = plan.coats().get(0).over(0.4);
    double[] by = HandScatter.stepByChance(plan);

    int steps = over[1] - over[0];
    assertThat(Arrays.stream(by).filter(b -> b != 0).count()).isEqualTo(steps);
    double spread = Math.sqrt(Arrays.stream(by).map(b -> b * b).sum());
    assertThat(spread).isCloseTo(PassPlan.Coat.STEADY / Math.sqrt(steps), within(1e-9));
  }

  @Test
  void where_nothing_was_written_other_steps_are_tried_and_the_meant_one_comes_first() {
    List<PassPlan> plans = plans(List.of(Map.of(), Map.of()), 0.6);
    assertThat(plans.get(0).meanStep()).isCloseTo(0.06, within(1e-9));
    assertThat(plans).hasSizeGreaterThan(7);
    assertThat(plans.stream().mapToDouble(PassPlan::meanStep).max().orElseThrow())
        .isCloseTo(0.93 * 0.2, within(1e-9));
    assertThat(plans.stream().skip(1).mapToDouble(PassPlan::meanStep))
        .allMatch(s -> Math.abs(Math.log(s / 0.06)) > 0.1);
    assertThat(passes(List.of(Map.of())).anyWritten()).isFalse();
  }

  @Test
  void a_coat_of_which_one_step_was_written_is_taken_as_even() {
    List<PassPlan> plans =
        plans(List.of(steps(0.055, 0.06), Map.of(2, Estimate.of(0.07, 0.003))), 0.5);
    List<Double> lines = plans.get(0).coats().get(1).centrelines();
    double step = lines.get(1) - lines.get(0);
    for (int i = 1; i < lines.size(); i++) {
      assertThat(lines.get(i) - lines.get(i - 1)).isCloseTo(step, within(1e-9));
    }
    assertThat(step).as("median of the written ones").isCloseTo(0.06, within(1e-9));
  }

  @Test
  void only_steps_that_would_leave_stripes_are_asked_of_the_places() {
    assertThat(passes(List.of(steps(0.06, 0.06))).stripedSteps()).isEmpty();
    assertThat(passes(List.of(steps(0.12, 0.12))).stripedSteps()).containsExactly(0.12);
    assertThat(DoubleStream.of(passes(List.of(Map.of())).stripedSteps()))
        .hasSizeGreaterThan(3)
        .allMatch(s -> s >= 0.42 * 0.2);
  }

  @Test
  void steps_and_passes_that_cannot_be_are_refused() {
    assertThatThrownBy(() -> passes(List.of(Map.of(2, Estimate.of(0, 0.003)))))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("step");
    assertThatThrownBy(() -> passes(List.of(Map.of(0, Estimate.of(0.06, 0.003)))))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("pass");
    assertThatThrownBy(() -> passes(List.of()))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("coats");
    assertThatThrownBy(() -> new WrittenPasses(0.6, 0.4, FAN, Double.NaN, List.of(Map.of())))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("meantStep");
  }
}
