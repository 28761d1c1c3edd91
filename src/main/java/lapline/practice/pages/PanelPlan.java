package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Dimension;

/**
 * The bare panel to scale, as every drawing of it begins: edge, features, numbered places, scale.
 */
final class PanelPlan {
  private static final double[] ROUND_METRES = {1, 0.5, 0.2, 0.1, 0.05, 0.02};
  private static final double[] ROUND_INCHES = {40, 20, 10, 4, 2, 1};

  private final PanelScale scale;
  private final double size;
  private final PhraseWriter words;

  PanelPlan(PanelScale scale, double size, PhraseWriter words) {
    this.scale = scale;
    this.size = size;
    this.words = words;
  }

  List<Shape> edge() {
    return List.of(Shape.Surface.of(scale.edge(), Fill.NONE, Pen.FIRM));
  }

  List<Shape> ground() {
    return List.of(Shape.Surface.of(scale.edge(), Fill.flat(Tone.SHEET), Pen.NONE));
  }

  /** Spots, apertures, edges and areas, dashed, with their names. */
  List<Shape> features() {
    List<Shape> shapes = new ArrayList<>();
    for (PanelOutline.Feature f : scale.panel().features()) {
      if (f.corners().size() == 2 || f.kind().equals("edge")) {
        shapes.add(new Shape.Line(scale.ring(f.corners()), Pen.FINE.dash()));
      } else {
        shapes.add(Shape.Surface.of(scale.ring(f.corners()), Fill.NONE, Pen.FINE.dash()));
      }
      shapes.add(label(f));
    }
    return shapes;
  }

  private Shape label(PanelOutline.Feature feature) {
    double x = feature.corners().stream().mapToDouble(PanelOutline.Point::x).average().orElse(0);
    double top = feature.corners().stream().mapToDouble(PanelOutline.Point::y).max().orElse(0);
    double y = Math.min(scale.y(top) + size * 1.2, scale.bottom() - size * 0.4);
    return Words.of(scale.x(x), y, size * 0.9, Align.MIDDLE, feature.label())
        .in(Tone.FAINT)
        .withHalo();
  }

  /** The reading places by number, each named {@code place-n} for the page's script. */
  List<Shape> numbered() {
    List<Shape> shapes = new ArrayList<>();
    for (PanelOutline.Place p : scale.panel().places()) {
      double x = scale.x(p.x());
      double y = scale.y(p.y());
      shapes.add(
          new Shape.Named(
              "place-" + p.number(),
              List.of(
                  new Shape.Circle(x, y, size * 0.85, Fill.flat(Tone.SHEET), Pen.FINE),
                  Words.of(x, y + size * 0.35, size, Align.MIDDLE, "" + p.number()).strong())));
    }
    return shapes;
  }

  /** A round length in the person's units, drawn to scale. */
  List<Shape> scaleBar(double x, double y) {
    boolean inches = words.unit(Dimension.LENGTH).equals("in");
    double length = inches ? 0.0254 * fitting(ROUND_INCHES, 0.0254) : fitting(ROUND_METRES, 1);
    double end = x + length * scale.mmPerMetre();
    return List.of(
        Shape.Line.of(x, y, end, y, Pen.FIRM),
        Shape.Line.of(x, y - size * 0.4, x, y + size * 0.4, Pen.FINE),
        Shape.Line.of(end, y - size * 0.4, end, y + size * 0.4, Pen.FINE),
        Words.of(
            end + size * 0.5,
            y + size * 0.35,
            size,
            Align.START,
            words.quantity(length, Dimension.LENGTH)));
  }

  private double fitting(double[] lengths, double unit) {
    double most = scale.panel().width() * 0.35;
    for (double length : lengths) {
      if (length * unit <= most) {
        return length;
      }
    }
    return lengths[lengths.length - 1];
  }
}
