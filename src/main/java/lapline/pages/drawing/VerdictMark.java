package lapline.pages.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The mark of a verdict: a ring filled, from the top clockwise, in proportion to the probability.
 */
public final class VerdictMark {
  private static final int STEPS = 60;

  private VerdictMark() {}

  /**
   * @param conformance probability that the true value lies in the target, 0 to 1
   */
  public static List<Shape> at(double x, double y, double radius, double conformance, Tone tone) {
    List<Shape> shapes = new ArrayList<>();
    double inner = radius * 0.78;
    int steps = (int) Math.round(STEPS * Math.max(0, Math.min(1, conformance)));
    if (steps > 0) {
      shapes.add(Shape.Surface.of(slice(x, y, inner, steps), Fill.flat(tone), Pen.NONE));
    }
    shapes.add(new Shape.Circle(x, y, radius * 0.92, Fill.NONE, Pen.of(tone, radius * 0.16)));
    return shapes;
  }

  private static List<Point> slice(double x, double y, double radius, int steps) {
    List<Point> ring = new ArrayList<>();
    ring.add(new Point(x, y));
    for (int i = 0; i <= steps; i++) {
      double angle = 2 * Math.PI * i / STEPS;
      ring.add(new Point(x + radius * Math.sin(angle), y - radius * Math.cos(angle)));
    }
    return ring;
  }
}
