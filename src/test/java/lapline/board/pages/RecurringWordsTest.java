package lapline.board.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.board.Recurring;
import lapline.pages.Messages;
import lapline.practice.pages.PhraseWriter;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** How large what comes back is, in words that can be taken in one way only. */
class RecurringWordsTest {
  private static final Instant FIRST = Instant.parse("2031-03-04T14:05:00Z");
  private static final PhraseWriter WORDS = new PhraseWriter(new Messages(), UnitSystem.METRIC);

  private static String trend(Dimension of, Optional<String> criterion, double... sizes) {
    List<Recurring.Panel> panels = new ArrayList<>();
    for (double size : sizes) {
      Instant scored = FIRST.plus(Duration.ofDays(panels.size()));
      panels.add(new Recurring.Panel(scored, true, Estimate.of(size, 0, null)));
    }
    Recurring r = new Recurring("task", "finding", panels, panels.size(), panels.size(), of);
    return RecurringWords.trend(r, criterion, WORDS);
  }

  @Test
  void a_share_shrinks_by_points_and_not_by_per_cent_of_itself() {
    String said = trend(Dimension.SHARE, Optional.empty(), 0.32, 0.24, 0.16, 0.08);
    assertThat(said)
        .contains("by about 8 percentage points from one panel to the next")
        .contains("between 8 and 8 percentage points)")
        .contains(
            "At first it put the panel out by 32\u00a0%, and by 8\u00a0% at the last of the 4");
    assertThat(said.substring(0, said.indexOf("At first"))).doesNotContain("%");
  }

  @Test
  void a_film_grows_by_what_it_is_measured_in() {
    assertThat(trend(Dimension.FILM, Optional.empty(), 2e-6, 4e-6, 6e-6, 8e-6))
        .contains("by about 2\u00a0µm from one panel to the next")
        .contains("between 2\u00a0µm and 2\u00a0µm");
  }

  @Test
  void a_size_without_a_unit_is_told_to_be_that_of_its_criterion() {
    Optional<String> hiding = Optional.of("Coats to hide");
    assertThat(trend(Dimension.COUNT, hiding, 1, 1))
        .contains("‘Coats to hide’ was off its target by 1 at first and by 1 at last.");
    assertThat(trend(Dimension.NUMBER, hiding, 1, 2, 1, 1))
        .contains("‘Coats to hide’ was off its target by 1 at first")
        .doesNotContain("put the panel out");
    assertThat(trend(Dimension.NUMBER, hiding, 4, 3, 2, 1))
        .contains("At first ‘Coats to hide’ was off its target by 4, and by 1 at the last");
  }

  @Test
  void one_with_a_unit_put_the_panel_out_whatever_it_is_about() {
    assertThat(trend(Dimension.LENGTH, Optional.of("Bleed"), 0.002))
        .isEqualTo(
            "It was measured on one panel: it put the panel out by 2\u00a0mm."
                + " From four on it is told whether it shrinks.");
  }

  @Test
  void a_bare_number_of_which_nobody_knows_what_it_counts_is_left_out() {
    assertThat(trend(Dimension.NUMBER, Optional.empty(), 1, 1)).isEmpty();
  }
}
