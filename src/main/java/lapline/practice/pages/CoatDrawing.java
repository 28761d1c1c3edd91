package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.LightnessScale;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.TypeFace;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Dimension;

/**
 * One coat on the panel to scale: the middle of every pass, how deep the fans lie over each other
 * (darker where more of them do), the overlap between neighbours in figures.
 */
final class CoatDrawing {
  private static final double WIDTH = 100;
  private static final double SIZE = TypeFace.ON_PHONES;

  private final SprayedCoat coat;
  private final PhraseWriter words;
  private final PanelScale scale;

  CoatDrawing(PanelOutline panel, SprayedCoat coat, PhraseWriter words) {
    this.coat = coat;
    this.words = words;
    this.scale = PanelScale.fitting(panel, 9, 4, 72, 80);
  }

  Drawing drawing() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Clipped(scale.edge(), layers()));
    shapes.add(Shape.Surface.of(scale.edge(), Fill.NONE, Pen.FIRM));
    double last = Double.NEGATIVE_INFINITY;
    for (SprayedCoat.Pass pass : coat.passes()) {
      if (isShown(pass)) {
        shapes.addAll(centre(pass));
      }
      double between = scale.y(pass.centre() + pass.spacing() / 2);
      if (onPanel(between) && Double.isFinite(coat.overlap(pass)) && between - last > SIZE) {
        shapes.add(overlap(pass, between));
        last = between;
      }
    }
    return new Drawing(
        "coat-" + coat.number(),
        WIDTH,
        scale.bottom() + 4,
        words.say("drawing.coat.title", coat.number()),
        description(),
        shapes);
  }

  private boolean onPanel(double y) {
    return y > scale.top() && y < scale.bottom();
  }

  /** Strips of the panel between the fans' edges, each toned by how many fans cover it. */
  private List<Shape> layers() {
    List<Shape> shapes = new ArrayList<>();
    if (!(coat.fanWidth() > 0)) {
      return shapes;
    }
    double half = coat.fanWidth() / 2;
    double[] edges =
        coat.passes().stream()
            .flatMap(p -> Stream.of(p.centre() - half, p.centre() + half))
            .mapToDouble(e -> e)
            .sorted()
            .toArray();
    for (int i = 0; i + 1 < edges.length; i++) {
      double middle = (edges[i] + edges[i + 1]) / 2;
      long fans = coat.passes().stream().filter(p -> Math.abs(p.centre() - middle) < half).count();
      shapes.add(
          Shape.Surface.box(
              scale.left(),
              scale.y(edges[i + 1]),
              scale.width(),
              scale.y(edges[i]) - scale.y(edges[i + 1]) + 0.05,
              Fill.flat(LightnessScale.at(Math.min(1, fans / 6.0))),
              Pen.NONE));
    }
    return shapes;
  }

  private List<Shape> centre(SprayedCoat.Pass pass) {
    double y = scale.y(pass.centre());
    double right = scale.left() + scale.width();
    return List.of(
        Shape.Line.of(scale.left() - 2, y, right + 2, y, Pen.FINE.dash()),
        Words.of(scale.left() - 2.6, y + SIZE * 0.35, SIZE, Align.END, "" + pass.number()));
  }

  /** What the drawing means for the coat, and which passes it cannot show. */
  String meaning() {
    List<Double> overlaps =
        coat.passes().stream().map(coat::overlap).filter(Double::isFinite).sorted().toList();
    String shown =
        overlaps.isEmpty()
            ? words.say("drawing.coat.no-overlap", coat.passes().size())
            : meaning(
                words.quantity(overlaps.get(0), Dimension.SHARE),
                words.quantity(overlaps.get(overlaps.size() - 1), Dimension.SHARE));
    String beyond =
        String.join(
            ", ",
            coat.passes().stream().filter(p -> !isShown(p)).map(p -> "" + p.number()).toList());
    return beyond.isEmpty() ? shown : shown + " " + words.say("drawing.coat.beyond", beyond);
  }

  private String meaning(String least, String most) {
    return least.equals(most)
        ? words.say("drawing.coat.meaning.even", least)
        : words.say("drawing.coat.meaning", least, most);
  }

  private boolean isShown(SprayedCoat.Pass pass) {
    return scale.y(pass.centre()) >= scale.top() && scale.y(pass.centre()) <= scale.bottom();
  }

  private Shape overlap(SprayedCoat.Pass pass, double y) {
    return Words.of(
            scale.left() + scale.width() + 3,
            y + SIZE * 0.35,
            SIZE,
            Align.START,
            words.quantity(coat.overlap(pass), Dimension.SHARE))
        .strong();
  }

  private String description() {
    String overlaps =
        String.join(
            ", ",
            coat.passes().stream()
                .filter(p -> Double.isFinite(coat.overlap(p)))
                .map(p -> words.quantity(coat.overlap(p), Dimension.SHARE))
                .toList());
    return overlaps.isEmpty()
        ? words.say("drawing.coat.no-overlap", coat.passes().size())
        : words.say(
            "drawing.coat.description",
            coat.passes().size(),
            words.quantity(coat.fanWidth(), Dimension.LENGTH),
            overlaps);
  }
}
