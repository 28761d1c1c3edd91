package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Place;
import lapline.practice.WrittenPanel;
import org.junit.jupiter.api.Test;

/** The drawing beside the fields shows each place that is read, and hides none by another. */
class EntryDrawingTest {
  private static final PanelOutline PANEL = WrittenPanel.under("clear/two-coats").task().panel();

  private static PanelOutline with(Place... further) {
    return PANEL.withFurther(List.of(further));
  }

  private static Place beside(int place, int letter) {
    Place at = PANEL.place(place).orElseThrow();
    return new Place(PanelOutline.FURTHER + letter, at.x() + 0.012, at.y() + 0.004, "");
  }

  @Test
  void a_letter_hides_no_number_and_no_other_letter() {
    PanelOutline panel = with(beside(1, 1), beside(8, 2), beside(8, 3));
    EntryDrawing drawing = EntryDrawing.of(panel);
    for (EntryDrawing.Spot letter : drawing.spots()) {
      if (PanelOutline.isFurther(letter.number())) {
        assertThat(letter.isBeside()).as(letter.label()).isTrue();
        assertThat(drawing.spots())
            .filteredOn(s -> s.number() != letter.number())
            .as(letter.label())
            .allMatch(s -> apart(s, letter) >= 2 * drawing.circle() * 0.999);
      }
    }
  }

  @Test
  void a_letter_in_a_free_place_stands_on_it() {
    Place one = PANEL.place(1).orElseThrow();
    Place free = new Place(PanelOutline.FURTHER + 1, PANEL.width() / 2, PANEL.height() / 2, "");
    PanelOutline panel =
        new PanelOutline(
            PANEL.width(), PANEL.height(), PANEL.outline(), List.of(one, free), List.of());
    assertThat(EntryDrawing.of(panel).spots()).noneMatch(EntryDrawing.Spot::isBeside);
  }

  @Test
  void a_further_place_stands_only_where_it_is_read() {
    PanelOutline panel = with(beside(1, 1));
    assertThat(EntryDrawing.of(panel, Set.of(1, 2, 101)).spots())
        .extracting(EntryDrawing.Spot::label)
        .contains("1", "A");
    assertThat(EntryDrawing.of(panel, Set.of(1, 2)).spots())
        .extracting(EntryDrawing.Spot::label)
        .contains("1", "15")
        .doesNotContain("A");
  }

  private static double apart(EntryDrawing.Spot a, EntryDrawing.Spot b) {
    return Math.hypot(a.letterX() - b.letterX(), a.letterY() - b.letterY());
  }
}
