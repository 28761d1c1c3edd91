package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.Reading;
import lapline.trade.measure.Dimension;

/**
 * How far each coat of colour went past the primer spot, drawn to scale as if it had gone out
 * evenly on all sides; the room to the panel's edge can be seen.
 */
final class StepOutDrawing {
  private static final String STEP_OUT = "step-out";
  private static final double WIDTH = 100;
  private static final double TALLEST = 110;
  private static final double SIZE = TypeFace.ON_PHONES;
  private static final int DIRECTIONS = 72;

  private final Optional<PanelOutline.Feature> spot;
  private final List<Reading> steps;
  private final PanelScale scale;
  private final PhraseWriter words;

  StepOutDrawing(PanelOutline panel, PanelEntry entry, PhraseWriter words) {
    this.spot = panel.features().stream().filter(f -> f.kind().equals("spot")).findFirst();
    this.steps =
        entry.of(STEP_OUT).stream().sorted(Comparator.comparingInt(r -> r.cell().coat())).toList();
    this.scale = PanelScale.fitting(panel, 1, 1, WIDTH - 2, TALLEST);
    this.words = words;
  }

  boolean canDraw() {
    return spot.isPresent() && !steps.isEmpty();
  }

  Drawing drawing() {
    PanelPlan plan = new PanelPlan(scale, SIZE, words);
    List<Shape> coats = new ArrayList<>(plan.ground());
    // the widest first, so that every edge stays in sight
    steps.stream()
        .sorted(Comparator.comparingDouble(r -> -r.value()))
        .forEach(r -> coats.add(coat(r)));
    coats.add(
        Shape.Surface.of(scale.ring(spot.orElseThrow().corners()), Fill.flat(Tone.LINE), Pen.FINE));
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Clipped(scale.edge(), coats));
    shapes.addAll(plan.edge());
    steps.forEach(r -> shapes.add(label(r)));
    double y = scale.bottom() + SIZE * 1.5;
    shapes.addAll(plan.scaleBar(scale.left(), y));
    return new Drawing(
        "step-outs", WIDTH, y + SIZE, words.say("drawing.step-out.title"), meaning(), shapes);
  }

  /** What it shows, in a sentence. */
  String meaning() {
    return words.say(
        "drawing.step-out.meaning",
        steps.stream().map(this::written).collect(Collectors.joining(", ")));
  }

  private String written(Reading r) {
    return words.say(
        "drawing.step-out.coat",
        String.valueOf(r.cell().coat()),
        words.quantity(r.value(), Dimension.LENGTH));
  }

  private Shape coat(Reading r) {
    return Shape.Surface.of(around(r.value()), Fill.flat(Tone.PALE), Pen.of(Tone.ACCENT, 0.4));
  }

  /**
   * All spots at this distance from the primer's edge: its farthest corner each way, and as far on.
   */
  private List<Point> around(double metres) {
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < DIRECTIONS; i++) {
      double angle = 2 * Math.PI * i / DIRECTIONS;
      double x = Math.cos(angle);
      double y = Math.sin(angle);
      PanelOutline.Point corner =
          spot.orElseThrow().corners().stream()
              .max(Comparator.comparingDouble(c -> c.x() * x + c.y() * y))
              .orElseThrow();
      ring.add(scale.at(corner.x() + metres * x, corner.y() + metres * y));
    }
    return ring;
  }

  private Shape label(Reading r) {
    List<PanelOutline.Point> corners = spot.orElseThrow().corners();
    double x = corners.stream().mapToDouble(PanelOutline.Point::x).average().orElse(0);
    double y = corners.stream().mapToDouble(PanelOutline.Point::y).max().orElse(0) + r.value();
    double high = Math.max(scale.top() + SIZE, scale.y(y) + SIZE * 0.35);
    return Words.of(scale.x(x), high, SIZE, Align.MIDDLE, written(r)).strong().withHalo();
  }
}
