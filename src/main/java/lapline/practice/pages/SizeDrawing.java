package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
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
import lapline.trade.measure.Estimate;

/**
 * How large one cause was from panel to panel, the first at the left: a dot with the whiskers of
 * its uncertainty where it was found and measured, a cross on the line of panels where it was not
 * found.
 */
public final class SizeDrawing {
  private static final double WIDTH = 100;
  private static final double HEIGHT = 50;
  private static final double LEFT = 19;
  private static final double RIGHT = 95;
  private static final double TOP = 6;
  private static final double FLOOR = 34;

  /** Where panels without the cause have their mark, below the size 0. */
  private static final double ABSENT = 38;

  private static final double BELOW = 47;
  private static final double SIZE = TypeFace.ON_PHONES;

  /**
   * One panel; its whiskers reach over the expanded uncertainty.
   *
   * @param size in SI; null where the cause was not found, or not measured
   */
  public record Panel(String when, boolean found, Estimate size) {
    private double high() {
      return size == null ? 0 : size.value() + size.expandedUncertainty();
    }
  }

  private final String id;
  private final String cause;
  private final List<Panel> panels;
  private final Dimension dimension;
  private final PhraseWriter words;
  private final double top;

  /**
   * @param id unlike others on the page
   * @param panels two or more, of which one at the least is measured
   * @param dimension of the sizes
   */
  public SizeDrawing(
      String id, String cause, List<Panel> panels, Dimension dimension, PhraseWriter words) {
    this.id = id;
    this.cause = cause;
    this.panels = List.copyOf(panels);
    this.dimension = dimension;
    this.words = words;
    this.top = Math.max(1e-9, panels.stream().mapToDouble(Panel::high).max().orElse(0));
  }

  public Drawing drawing() {
    List<Shape> shapes = new ArrayList<>(axes());
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      if (panels.get(i).size() != null) {
        line.add(new Point(x(i), y(panels.get(i).size().value())));
      }
    }
    if (line.size() > 1) {
      shapes.add(new Shape.Line(line, Pen.of(Tone.ACCENT, 0.4)));
    }
    for (int i = 0; i < panels.size(); i++) {
      shapes.addAll(panel(i));
    }
    return new Drawing(
        id, WIDTH, HEIGHT, words.say("drawing.sizes.title", cause), description(), shapes);
  }

  private List<Shape> axes() {
    return List.of(
        Shape.Line.of(LEFT - 2, y(0), RIGHT + 2, y(0), Pen.of(Tone.LINE, 0.3)),
        Shape.Line.of(LEFT - 2, y(top), RIGHT + 2, y(top), Pen.of(Tone.LINE, 0.2).dash()),
        label(LEFT - 3, y(top) + SIZE * 0.35, Align.END, words.quantity(top, dimension)),
        label(LEFT - 3, y(0) + SIZE * 0.35, Align.END, words.quantity(0, dimension)),
        label(LEFT - 4, BELOW, Align.START, panels.get(0).when()),
        label(RIGHT + 3, BELOW, Align.END, panels.get(panels.size() - 1).when()));
  }

  private static Shape label(double x, double y, Align align, String text) {
    return Words.of(x, y, SIZE, align, text).in(Tone.FAINT);
  }

  private List<Shape> panel(int i) {
    Panel panel = panels.get(i);
    if (!panel.found()) {
      return cross(x(i));
    }
    if (panel.size() == null) {
      return List.of();
    }
    double size = panel.size().value();
    double far = panel.size().expandedUncertainty();
    return List.of(
        Shape.Line.of(
            x(i), y(Math.max(0, size - far)), x(i), y(size + far), Pen.of(Tone.ACCENT, 0.4)),
        new Shape.Circle(x(i), y(size), 1.4, Fill.flat(Tone.ACCENT), Pen.of(Tone.ACCENT, 0.4)));
  }

  private static List<Shape> cross(double x) {
    Pen pen = Pen.of(Tone.FAINT, 0.4);
    return List.of(
        Shape.Line.of(x - 1, ABSENT - 1, x + 1, ABSENT + 1, pen),
        Shape.Line.of(x - 1, ABSENT + 1, x + 1, ABSENT - 1, pen));
  }

  private double x(int i) {
    return LEFT + (RIGHT - LEFT) * i / Math.max(1, panels.size() - 1);
  }

  private double y(double size) {
    return FLOOR - (FLOOR - TOP) * size / top;
  }

  private String description() {
    List<String> said = new ArrayList<>();
    for (Panel p : panels) {
      said.add(describe(p));
    }
    return String.join(" ", said);
  }

  private String describe(Panel p) {
    if (p.size() == null) {
      return words.say(p.found() ? "drawing.sizes.no-size" : "drawing.sizes.absent", p.when());
    }
    return words.say("drawing.sizes.size", p.when(), words.quantity(p.size(), dimension));
  }
}
