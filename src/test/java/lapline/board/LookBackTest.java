package lapline.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.judgement.progress.SizeTrend;
import lapline.judgement.progress.SizeTrend.Told;
import lapline.practice.Attempt;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/**
 * What keeps coming back: how often from where it was found, how large from where it was measured.
 */
class LookBackTest {
  private static final Instant FIRST = Instant.parse("2031-03-04T14:05:00Z");
  private static final Double NOT_FOUND = null;
  private static final Double NO_SIZE = -1.0;

  private final List<Attempt> newestFirst = new ArrayList<>();
  private final Map<UUID, List<FoundSize>> found = new HashMap<>();

  /** The next panel of the task, with arcing of this size in µm. */
  private void panel(Double size) {
    Instant at = FIRST.plus(Duration.ofDays(newestFirst.size()));
    Attempt panel =
        new Attempt(
            UUID.randomUUID(),
            new UUID(0, 1),
            new UUID(1, 1),
            "clear/two-coats",
            "v1",
            "clear",
            "clear",
            "code",
            "",
            null,
            UnitSystem.METRIC,
            Attempt.State.SCORED,
            0,
            at,
            new Attempt.Outcome(at, 70, false));
    newestFirst.add(0, panel);
    if (size != null) {
      found.put(panel.id(), List.of(arcing(panel.id(), size)));
    }
  }

  private static FoundSize arcing(UUID panel, double size) {
    return size < 0
        ? new FoundSize(panel, "arcing", null, null, null, null)
        : new FoundSize(panel, "arcing", size * 1e-6, 1e-6, null, Dimension.FILM);
  }

  private List<Recurring> recurring(Double... sizes) {
    for (Double size : sizes) {
      panel(size);
    }
    return LookBack.recurring(newestFirst, found).toList();
  }

  @Test
  void what_was_found_on_two_of_the_last_six_panels_comes_back() {
    Recurring r = recurring(20.0, 9.0, NOT_FOUND, 8.0, NOT_FOUND, NOT_FOUND, 5.0).get(0);
    assertThat(r.finding()).isEqualTo("arcing");
    assertThat(r.looked()).isEqualTo(6);
    assertThat(r.times()).as("the first panel is too long ago to count").isEqualTo(3);
    assertThat(r.isOnLast()).isTrue();
  }

  @Test
  void what_was_found_once_lately_does_not_however_often_it_was_before() {
    assertThat(recurring(9.0, 9.0, NOT_FOUND, NOT_FOUND, NOT_FOUND, NOT_FOUND, NOT_FOUND, 5.0))
        .isEmpty();
  }

  @Test
  void what_was_found_on_none_of_the_last_three_is_over() {
    assertThat(recurring(9.0, 9.0, 9.0, NOT_FOUND, NOT_FOUND, NOT_FOUND)).isEmpty();
    newestFirst.clear();
    assertThat(recurring(9.0, 9.0, 9.0, NOT_FOUND, NOT_FOUND)).hasSize(1);
  }

  @Test
  void a_panel_without_it_is_not_of_the_size_nought() {
    Recurring r = recurring(9.0, 9.0, 9.0, 9.0, NOT_FOUND, NOT_FOUND).get(0);
    SizeTrend trend = r.trend().orElseThrow();
    assertThat(trend.sizes()).isEqualTo(4);
    assertThat(trend.slope()).isZero();
    assertThat(trend.told()).isEqualTo(Told.NEITHER);
    assertThat(r.isOnLast()).isFalse();
  }

  @Test
  void its_size_falls_by_so_much_for_each_panel_also_over_those_without_it() {
    Recurring r = recurring(30.0, 27.0, NOT_FOUND, 21.0, 18.0, NOT_FOUND, 12.0).get(0);
    SizeTrend trend = r.trend().orElseThrow();
    assertThat(trend.slope()).isCloseTo(-3e-6, within(1e-12));
    assertThat(trend.told()).isEqualTo(Told.SHRINKING);
    assertThat(r.dimension()).isEqualTo(Dimension.FILM);
  }

  @Test
  void three_measured_sizes_show_no_trend_and_one_without_a_size_still_counts() {
    Recurring r = recurring(30.0, NO_SIZE, 20.0, 10.0).get(0);
    assertThat(r.times()).isEqualTo(4);
    assertThat(r.measured()).hasSize(3);
    assertThat(r.trend()).isEmpty();
  }
}
