package lapline.practice.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;

/** What was written down about the passes of a coat reaches the science, and nothing else does. */
class WrittenStrokesTest {
  private static final PanelOutline PANEL = Panels.staggered(24);
  private static final PracticeTask TASK = Panels.task(PANEL);

  private static Map<Integer, Estimate> coat(int number, PanelEntry entry) {
    Technique technique = Technique.of(TASK, entry);
    return WrittenStrokes.of(TASK, entry, technique).steps().get(number - 1);
  }

  @Test
  void the_first_pass_counts_from_the_edge_and_the_others_from_the_one_before() {
    PanelEntry entry =
        PanelEntry.of(
            List.of(
                Panels.reading(Cell.coat("first-pass", 1), -0.01, 0.005),
                Panels.reading(Cell.pass("pass-spacing", 1, 2), 0.07, 0.004)));
    assertThat(coat(1, entry))
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(1, Estimate.of(-0.01, 0.005), 2, Estimate.of(0.07, 0.004)));
  }

  @Test
  void of_a_coat_of_which_nothing_was_written_nothing_is_known() {
    PanelEntry entry =
        PanelEntry.of(List.of(Panels.reading(Cell.coat("first-pass", 2), 0.02, 0.005)));
    assertThat(coat(1, entry)).isEmpty();
  }

  @Test
  void a_first_pass_off_the_panel_is_none() {
    for (double off : new double[] {PANEL.height() + 0.01, -PANEL.height() - 0.01}) {
      PanelEntry entry =
          PanelEntry.of(List.of(Panels.reading(Cell.coat("first-pass", 1), off, 0.005)));
      assertThat(coat(1, entry)).isEmpty();
    }
  }
}
