package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;

/** By hand, from the sampling of a cosine: rows a period apart see one point of it. */
class StripesSeenTest {

  @Test
  void rows_as_far_apart_as_the_passes_see_nothing_of_the_stripes() {
    assertThat(StripesSeen.share(List.of(0.05, 0.2, 0.35), 0.15)).isCloseTo(0, within(1e-12));
    assertThat(StripesSeen.share(List.of(0.05, 0.2, 0.35), 0.075)).isCloseTo(0, within(1e-12));
  }

  /** Half a period apart: from ±1 at the crests to the same height a quarter beside them. */
  @Test
  void rows_half_a_step_apart_see_all_or_nothing_and_that_is_not_sure() {
    assertThat(StripesSeen.share(List.of(0.1, 0.2), 0.2)).isCloseTo(0, within(1e-12));
  }

  /**
   * A third apart, at angles φ, φ + 120° and φ + 240°: highest less lowest is √3·cos(30° − φ) for φ
   * from 0 to 60°, at the least 3/2 for φ = 0, which is 3/4 of crest to trough.
   */
  @Test
  void rows_a_third_of_a_step_apart_are_sure_to_see_three_quarters_of_it() {
    assertThat(StripesSeen.share(List.of(0.1, 0.2, 0.3), 0.3)).isCloseTo(0.75, within(1e-9));
  }

  @Test
  void three_more_places_show_what_rows_hide() {
    PassPlan.Coat coat = PassPlan.Coat.even(0.4, 0.15, 0.23, 0.4, 0.006, 0.05, 0.04);
    PassPlan plan =
        new PassPlan(0.6, 0.4, List.of(coat), Estimate.of(0.23, 0.01), Estimate.of(2, 0.3));
    List<Spot> rows =
        DoubleStream.of(0.05, 0.2, 0.35)
            .boxed()
            .flatMap(y -> Stream.of(new Spot(0.1, y), new Spot(0.5, y)))
            .toList();
    double[] steps = {0.1, 0.15, 0.2};
    List<Spot> next = StripesSeen.next(plan, rows, steps);
    assertThat(next).hasSize(3);
    List<Double> heights = new ArrayList<>(rows.stream().map(Spot::y).toList());
    assertThat(StripesSeen.share(heights, steps)).isCloseTo(0, within(1e-9));
    next.forEach(s -> heights.add(s.y()));
    assertThat(StripesSeen.share(heights, steps)).isGreaterThan(0.7);
    assertThat(next.stream().mapToDouble(Spot::x).distinct().count()).isEqualTo(3);
  }

  @Test
  void no_heights_and_no_step_are_refused() {
    assertThatThrownBy(() -> StripesSeen.share(List.of(), 0.1))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("heights");
    assertThatThrownBy(() -> StripesSeen.share(List.of(0.1), 0))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("step");
  }
}
