package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Shape;
import lapline.practice.pages.SizeDrawing.Panel;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The size of a cause from panel to panel: a panel without it is no dot at nought. */
class SizeDrawingTest {
  private static final List<Panel> PANELS =
      List.of(
          new Panel("1 Mar", true, Estimate.of(20e-6, 2e-6)),
          new Panel("2 Mar", false, null),
          new Panel("3 Mar", true, Estimate.of(1e-6, 2e-6)));

  private static Drawing drawing(UnitSystem units) {
    return new SizeDrawing(
            "recurring-1",
            "Arcing",
            PANELS,
            Dimension.FILM,
            new PhraseWriter(new Messages(), units))
        .drawing();
  }

  private static <T> List<T> shapes(Class<T> kind) {
    return drawing(UnitSystem.METRIC).shapes().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  @Test
  void each_measured_panel_has_a_dot_the_larger_the_higher_and_no_other_has() {
    List<Shape.Circle> dots = shapes(Shape.Circle.class);
    assertThat(dots).hasSize(2);
    assertThat(dots.get(0).x()).isLessThan(dots.get(1).x());
    assertThat(dots.get(0).y()).isLessThan(dots.get(1).y());
  }

  @Test
  void no_whisker_goes_below_nought() {
    double floor = shapes(Shape.Line.class).get(0).points().get(0).y();
    double last = shapes(Shape.Circle.class).get(1).x();
    assertThat(shapes(Shape.Line.class))
        .filteredOn(l -> l.points().stream().allMatch(p -> p.x() == last))
        .hasSize(1)
        .allMatch(l -> l.points().stream().allMatch(p -> p.y() <= floor));
  }

  @Test
  void it_is_told_in_words_and_in_the_readers_units() {
    assertThat(drawing(UnitSystem.METRIC).description().replaceAll("[\\u00a0\\u202f]", " "))
        .contains("1 Mar: 20 ± 4 µm.")
        .contains("2 Mar: not found.");
    assertThat(drawing(UnitSystem.US).description()).contains("mil");
  }
}
