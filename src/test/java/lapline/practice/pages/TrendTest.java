package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import lapline.pages.Messages;
import lapline.pages.drawing.Shape;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What was changed for each panel can be read to its end, clear of the panel below. */
class TrendTest {
  private static final String LONG =
      "Walked with the gun and kept the wrist straight, from one masked edge to the other, and"
          + " started each pass before the panel";

  private static List<Shape.Words> words(double score) {
    Trend.Panel panel = new Trend.Panel("9 Aug 2025", score, true, LONG);
    return new Trend(List.of(panel, panel), new PhraseWriter(new Messages(), UnitSystem.METRIC))
        .drawing().shapes().stream()
            .filter(Shape.Words.class::isInstance)
            .map(Shape.Words.class::cast)
            .filter(w -> w.halo())
            .toList();
  }

  @Test
  void a_long_note_stands_whole_and_above_the_next_panel() {
    for (double score : new double[] {30, 80}) {
      List<Shape.Words> all = words(score);
      String note =
          all.subList(1, all.size() / 2).stream()
              .map(Shape.Words::text)
              .collect(Collectors.joining(" "));
      assertThat(note).isEqualTo(LONG);
      for (int i = 1; i < all.size(); i++) {
        Shape.Words line = all.get(i);
        assertThat(line.y() - all.get(i - 1).y()).as(line.text()).isGreaterThan(line.size());
      }
      Shape.Words second = all.get(all.size() / 2);
      assertThat(second.y() - all.get(all.size() / 2 - 1).y()).isGreaterThan(1.4 * second.size());
    }
  }
}
