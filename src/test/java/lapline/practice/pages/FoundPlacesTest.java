package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Tone;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What was found at a panel's places, and how far its coats stepped out, drawn to scale. */
class FoundPlacesTest {
  private static final PhraseWriter METRIC = new PhraseWriter(new Messages(), UnitSystem.METRIC);
  private static final PhraseWriter US = new PhraseWriter(new Messages(), UnitSystem.US);

  private static FoundPlaces of(WrittenPanel panel, PhraseWriter words) {
    return new FoundPlaces(panel.task(), panel.score(), words);
  }

  private static WrittenPanel preparedWithShineAt(int place) {
    WrittenPanel panel = WrittenPanel.under("preparing/flat-panel");
    for (int p = 1; p <= 14; p++) {
      panel.put("shine-left.at" + p, p == place ? "shine" : "dull");
    }
    return panel;
  }

  private static List<Shape> all(List<Shape> shapes) {
    List<Shape> all = new ArrayList<>();
    for (Shape s : shapes) {
      all.add(s);
      if (s instanceof Shape.Named named) {
        all.addAll(all(named.shapes()));
      }
    }
    return all;
  }

  private static List<Shape> filled(Drawing drawing) {
    return all(drawing.shapes()).stream()
        .filter(s -> s instanceof Shape.Circle c && c.fill().equals(Fill.flat(Tone.WARM)))
        .toList();
  }

  private static List<String> written(Drawing drawing) {
    return all(drawing.shapes()).stream()
        .filter(Shape.Words.class::isInstance)
        .map(s -> ((Shape.Words) s).text().replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void a_place_with_something_left_to_do_is_filled_and_named_in_words() {
    Drawing drawing = of(preparedWithShineAt(8), METRIC).drawing();
    assertThat(filled(drawing)).hasSize(1);
    assertThat(drawing.description()).contains("Places with shine left: 1 of 14: left edge (8)");
    assertThat(filled(of(preparedWithShineAt(0), METRIC).drawing())).isEmpty();
  }

  @Test
  void what_was_measured_at_a_place_stands_beside_it_in_the_persons_units() {
    WrittenPanel lid =
        WrittenPanel.under("masking/hatch-lid-aperture")
            .putAtPlaces("jamb-overhang", 25.4, 26, 24, 27, 22, 23, 25, 26);
    assertThat(written(of(lid, METRIC).drawing())).contains("26 mm");
    assertThat(written(of(lid, US).drawing())).contains("1 in").doesNotContain("26 mm");
  }

  @Test
  void a_panel_that_nothing_is_read_on_has_no_such_drawing() {
    assertThat(of(WrittenPanel.under("coverage/spray-out-card"), METRIC).canDraw()).isFalse();
  }

  @Test
  void each_coat_lies_as_far_past_the_primer_as_was_written_down() {
    WrittenPanel panel = WrittenPanel.under("coverage/base-over-spot");
    panel.put("step-out.c1", "20 mm").put("step-out.c2", "80 mm");
    var steps = new StepOutDrawing(panel.task().panel(), panel.entry(), METRIC);
    assertThat(steps.canDraw()).isTrue();
    List<Double> widths = new ArrayList<>();
    for (Shape s : ((Shape.Clipped) steps.drawing().shapes().get(0)).shapes()) {
      if (s instanceof Shape.Surface surface && surface.fill().equals(Fill.flat(Tone.PALE))) {
        var x = surface.rings().get(0).stream().mapToDouble(p -> p.x()).summaryStatistics();
        widths.add(x.getMax() - x.getMin());
      }
    }
    double mmPerMetre = 98 / panel.task().panel().width();
    assertThat(widths).hasSize(2);
    assertThat(widths.get(0) - widths.get(1)).isCloseTo(2 * 0.060 * mmPerMetre, within(1e-9));
    assertThat(steps.meaning().replace('\u00a0', ' ')).contains("coat 1: 20 mm, coat 2: 80 mm");
  }
}
