package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/**
 * The gun's distance from the panel along the stroke: every pass a fine line, their mean a firm one
 * with its figures at start, middle and end, the target band behind. Distance is drawn larger than
 * the stroke's length.
 */
final class StrokeDrawing {
  private static final double WIDTH = 100;
  private static final double LEFT = 12;
  private static final double ROOM = 76;
  private static final double TOP = 8;
  private static final double TALL = 34;
  private static final double SIZE = TypeFace.ON_PHONES;
  private static final List<ToDoubleFunction<SprayedCoat.Pass>> SPOTS =
      List.of(SprayedCoat.Pass::start, SprayedCoat.Pass::middle, SprayedCoat.Pass::end);

  /** Metres of drift that a rule held beside the gun can show; common practice, no source. */
  private static final double SEEN = 0.01;

  private static final List<String> NAMES =
      List.of("drawing.stroke.start", "drawing.stroke.middle", "drawing.stroke.end");

  private final SprayedCoat coat;
  private final TargetRange target;
  private final PhraseWriter words;
  private final double farthest;

  /**
   * @param target range of the distance; open where the task sets none
   */
  StrokeDrawing(SprayedCoat coat, TargetRange target, PhraseWriter words) {
    this.coat = coat;
    this.target = target;
    this.words = words;
    double most = coat.passes().stream().flatMapToDouble(this::distances).max().orElse(0.2);
    this.farthest = 1.15 * Math.max(most, target.hasMost() ? target.most() : 0);
  }

  /** Whether any distance was measured. */
  static boolean canDraw(SprayedCoat coat) {
    return SPOTS.stream().anyMatch(spot -> mean(coat, spot).isPresent());
  }

  Drawing drawing() {
    List<Shape> shapes = new ArrayList<>();
    double panel = TOP + TALL;
    shapes.addAll(band());
    shapes.add(Shape.Surface.box(LEFT - 6, panel, ROOM + 12, 1.6, Fill.flat(Tone.INK), Pen.NONE));
    coat.passes().forEach(p -> addLine(shapes, p));
    List<Point> means = new ArrayList<>();
    for (int i = 0; i < SPOTS.size(); i++) {
      double x = LEFT + ROOM * i / 2;
      shapes.add(Words.of(x, panel + 2 + SIZE * 1.5, SIZE, Align.MIDDLE, words.say(NAMES.get(i))));
      mean(coat, SPOTS.get(i)).ifPresent(mean -> shapes.add(figure(x, mean)));
      mean(coat, SPOTS.get(i)).ifPresent(mean -> means.add(new Point(x, up(mean))));
    }
    shapes.add(new Shape.Line(means, Pen.of(Tone.ACCENT, 0.9)));
    means.forEach(
        m -> shapes.add(new Shape.Circle(m.x(), m.y(), 1.2, Fill.flat(Tone.ACCENT), Pen.NONE)));
    return new Drawing(
        "stroke-" + coat.number(),
        WIDTH,
        panel + 3 + SIZE * 2,
        words.say("drawing.stroke.title", coat.number()),
        words.say("drawing.stroke.description", words.range(target, Dimension.LENGTH), said()),
        shapes);
  }

  /** What the mean of the passes says: where the gun moved on its way, and what that does. */
  String meaning() {
    OptionalDouble start = mean(coat, SprayedCoat.Pass::start);
    OptionalDouble end = mean(coat, SprayedCoat.Pass::end);
    String band = words.say("drawing.stroke.lines", words.range(target, Dimension.LENGTH));
    if (start.isEmpty() || end.isEmpty()) {
      return band;
    }
    double drift = end.getAsDouble() - start.getAsDouble();
    double ends = (end.getAsDouble() + start.getAsDouble()) / 2;
    double bow = ends - mean(coat, SprayedCoat.Pass::middle).orElse(ends);
    return band + " " + moved(drift, bow);
  }

  /** What is larger, the way from start to end or the bow between them. */
  private String moved(double drift, double bow) {
    boolean bowed = Math.abs(bow) > Math.abs(drift);
    double most = bowed ? bow : drift;
    if (Math.abs(most) < SEEN) {
      return words.say("drawing.stroke.steady", words.spot(SEEN));
    }
    String way = most > 0 ? "away" : "nearer";
    return words.say(
        (bowed ? "drawing.stroke.ends-" : "drawing.stroke.") + way, words.spot(Math.abs(most)));
  }

  private List<Shape> band() {
    if (!target.hasLeast() && !target.hasMost()) {
      return List.of();
    }
    double low = up(target.hasLeast() ? target.least() : 0);
    double high = up(target.hasMost() ? target.most() : farthest);
    double left = LEFT - 6;
    return List.of(
        Shape.Surface.box(left, high, ROOM + 12, low - high, Fill.flat(Tone.PALE), Pen.NONE),
        Shape.Line.of(left, high, left + ROOM + 12, high, Pen.FINE.dash()),
        Shape.Line.of(left, low, left + ROOM + 12, low, Pen.FINE.dash()));
  }

  private void addLine(List<Shape> shapes, SprayedCoat.Pass pass) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < SPOTS.size(); i++) {
      double distance = SPOTS.get(i).applyAsDouble(pass);
      if (!Double.isNaN(distance)) {
        points.add(new Point(LEFT + ROOM * i / 2, up(distance)));
      }
    }
    if (points.size() > 1) {
      shapes.add(new Shape.Line(points, Pen.of(Tone.FAINT, 0.25)));
    }
  }

  private Shape figure(double x, double mean) {
    return Words.of(x, up(mean) - 2.4, SIZE, Align.MIDDLE, words.quantity(mean, Dimension.LENGTH))
        .strong()
        .withHalo();
  }

  private String said() {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < SPOTS.size(); i++) {
      String name = words.say(NAMES.get(i));
      mean(coat, SPOTS.get(i))
          .ifPresent(m -> parts.add(name + " " + words.quantity(m, Dimension.LENGTH)));
    }
    return String.join(", ", parts);
  }

  private static OptionalDouble mean(SprayedCoat coat, ToDoubleFunction<SprayedCoat.Pass> spot) {
    return coat.passes().stream().mapToDouble(spot).filter(d -> !Double.isNaN(d)).average();
  }

  private java.util.stream.DoubleStream distances(SprayedCoat.Pass pass) {
    return SPOTS.stream().mapToDouble(s -> s.applyAsDouble(pass)).filter(d -> !Double.isNaN(d));
  }

  private double up(double distance) {
    return TOP + TALL * (1 - Math.max(0, Math.min(1, distance / farthest)));
  }
}
