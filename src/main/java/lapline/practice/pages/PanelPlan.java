package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
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

  /** Spots, apertures, edges and areas, dashed, with their names where there is room. */
  List<Shape> features() {
    LabelPlacing room = new LabelPlacing(size * 0.9, scale.edge());
    scale.panel().places().forEach(p -> room.keepFree(scale.x(p.x()), scale.y(p.y()), size));
    scale.panel().features().forEach(f -> room.keepFree(scale.ring(f.corners())));
    List<Shape> outlines = new ArrayList<>();
    List<Shape> names = new ArrayList<>();
    for (PanelOutline.Feature f : edgesFirst()) {
      List<Point> corners = scale.ring(f.corners());
      outlines.add(outline(f, corners));
      names.add(room.name(f.label(), corners).in(Tone.FAINT).withHalo());
    }
    outlines.addAll(names);
    return outlines;
  }

  /** An edge has little room beside it, so its name is written before others take it. */
  private List<PanelOutline.Feature> edgesFirst() {
    return scale.panel().features().stream()
        .sorted(Comparator.comparing(f -> !f.kind().equals("edge")))
        .toList();
  }

  /** The same without their names, where something else is written on the panel. */
  List<Shape> outlines() {
    return scale.panel().features().stream().map(f -> outline(f, scale.ring(f.corners()))).toList();
  }

  /** The outlines of spots, over the circles of the places inside that would hide them. */
  List<Shape> spots() {
    return scale.panel().features().stream()
        .filter(f -> f.kind().equals("spot"))
        .map(f -> (Shape) Shape.Surface.of(scale.ring(f.corners()), Fill.NONE, Pen.FIRM))
        .toList();
  }

  /** Dashes would hide the form of what is hardly larger than they are. */
  private Shape outline(PanelOutline.Feature feature, List<Point> corners) {
    if (corners.size() == 2 || feature.kind().equals("edge")) {
      return new Shape.Line(corners, Pen.FINE.dash());
    }
    double across = corners.stream().mapToDouble(c -> distance(c, corners.get(0))).max().orElse(0);
    return Shape.Surface.of(corners, Fill.NONE, across < 6 ? Pen.FINE : Pen.FINE.dash());
  }

  private static double distance(Point a, Point b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  /** The reading places by number, each named {@code place-n} for the page's script. */
  List<Shape> numbered() {
    return numbered(Set.of());
  }

  /** The same, with some of them filled: it is seen without colour, too. */
  List<Shape> numbered(Set<Integer> filled) {
    List<Shape> shapes = new ArrayList<>();
    for (PanelOutline.Place p : scale.panel().places()) {
      shapes.add(new Shape.Named("place-" + p.number(), numbered(p, filled.contains(p.number()))));
    }
    return shapes;
  }

  private List<Shape> numbered(PanelOutline.Place place, boolean filled) {
    double x = scale.x(place.x());
    double y = scale.y(place.y());
    Words number =
        Words.of(x, y + size * 0.35, size, Align.MIDDLE, PanelOutline.nameOf(place.number()))
            .strong();
    return filled
        ? List.of(
            new Shape.Circle(x, y, size * 1.1, Fill.flat(Tone.WARM), Pen.FIRM),
            number.in(Tone.SHEET))
        : List.of(new Shape.Circle(x, y, size * 0.85, Fill.flat(Tone.SHEET), Pen.FINE), number);
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
