package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;

/** Places that tell the faults of a hand better than rows and columns do. */
class ReadingPlanTest {
  private static final double WIDTH = SprayedPanel.WIDTH;
  private static final double HEIGHT = SprayedPanel.HEIGHT;
  private static final double FAN = SprayedPanel.FAN;

  private static PassPlan plan(double overlap) {
    double step = FAN * (1 - overlap);
    PassPlan.Coat coat = PassPlan.Coat.even(0, step, FAN, HEIGHT, 0.006, 0.05, step / 3);
    return new PassPlan(
        WIDTH, HEIGHT, List.of(coat, coat), Estimate.of(FAN, 0.01), Estimate.of(2, 0.25));
  }

  private static List<Spot> rows(int columns, int rows) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < columns * rows; i++) {
      spots.add(
          new Spot(
              0.03 + (WIDTH - 0.06) * (i % columns) / (columns - 1),
              0.03 + (HEIGHT - 0.06) * (i / columns) / (rows - 1)));
    }
    return spots;
  }

  @Test
  void as_many_places_tell_more_than_rows_and_columns_of_them() {
    for (double overlap : new double[] {0.7, 0.5}) {
      PassPlan plan = plan(overlap);
      double ours = ReadingPlan.worth(plan, ReadingPlan.of(plan, 20, 0.03), 0.03);
      assertThat(ours).isGreaterThan(ReadingPlan.worth(plan, rows(5, 4), 0.03) + 0.1);
      assertThat(ours).isGreaterThan(ReadingPlan.worth(plan, rows(4, 5), 0.03) + 0.1);
    }
  }

  @Test
  void places_lie_on_the_panel_and_apart_and_are_the_same_each_time() {
    PassPlan plan = plan(0.7);
    List<Spot> spots = ReadingPlan.of(plan, 24, 0.03);
    assertThat(spots).hasSize(24).isEqualTo(ReadingPlan.of(plan, 24, 0.03));
    double apart = 0.5 * Math.sqrt(WIDTH * HEIGHT / 24);
    for (Spot a : spots) {
      assertThat(a.x()).isBetween(0.0149, WIDTH - 0.0149);
      assertThat(a.y()).isBetween(0.0149, HEIGHT - 0.0149);
      assertThat(spots.stream().filter(b -> b.from(a) < apart - 1e-9)).hasSize(1);
    }
  }

  @Test
  void one_place_more_never_tells_less() {
    PassPlan plan = plan(0.6);
    List<Spot> spots = rows(6, 4);
    double before = 0;
    for (int n = 1; n <= spots.size(); n++) {
      double now = ReadingPlan.worth(plan, spots.subList(0, n), 0.03);
      assertThat(now).isGreaterThanOrEqualTo(before - 1e-9);
      before = now;
    }
  }

  @Test
  void too_few_and_too_many_are_refused() {
    assertThatThrownBy(() -> ReadingPlan.of(plan(0.7), 7, 0.03))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("count");
    assertThatThrownBy(() -> ReadingPlan.of(plan(0.7), 201, 0.03)).hasMessageContaining("count");
    assertThatThrownBy(() -> ReadingPlan.of(plan(0.7), 20, 0)).hasMessageContaining("uncertainty");
    assertThatThrownBy(() -> ReadingPlan.worth(plan(0.7), List.of(), 0.03))
        .hasMessageContaining("places");
  }
}
