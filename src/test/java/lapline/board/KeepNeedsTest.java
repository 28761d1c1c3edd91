package lapline.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import lapline.board.NeedRecords.Stuck;
import org.junit.jupiter.api.Test;

/** Who counts as stuck: the last three panels of a task, all missed in the same way. */
class KeepNeedsTest {
  private static final Instant LAST = Instant.parse("2031-03-04T14:05:00Z");

  @Test
  void three_in_a_row_missed_alike_are_stuck_and_more_are_counted() {
    assertThat(KeepNeeds.stuck(missed("low", "low", "low")))
        .contains(new Stuck("clear/two-coats", "low", 3, LAST));
    assertThat(KeepNeeds.stuck(missed("low", "low", "low", "low", "high")))
        .map(Stuck::panels)
        .contains(4);
  }

  @Test
  void two_in_a_row_or_three_in_different_ways_or_without_a_cause_are_not() {
    assertThat(KeepNeeds.stuck(missed("low", "low"))).isEmpty();
    assertThat(KeepNeeds.stuck(missed("low", "high", "low", "low"))).isEmpty();
    assertThat(KeepNeeds.stuck(missed(null, null, null))).isEmpty();
  }

  @Test
  void an_accepted_panel_ends_it_whatever_was_found_on_it() {
    List<LastPanel> panels = missed("low", "low", "low");
    panels.add(0, panel(0, true, "low"));
    assertThat(KeepNeeds.stuck(panels)).isEmpty();
  }

  private static List<LastPanel> missed(String... findings) {
    List<LastPanel> panels = new ArrayList<>();
    for (String finding : findings) {
      panels.add(panel(panels.size(), false, finding));
    }
    return panels;
  }

  private static LastPanel panel(int daysAgo, boolean accepted, String finding) {
    Instant at = LAST.minus(Duration.ofDays(daysAgo));
    return new LastPanel(UUID.randomUUID(), "clear/two-coats", at, at, accepted, finding, false);
  }
}
