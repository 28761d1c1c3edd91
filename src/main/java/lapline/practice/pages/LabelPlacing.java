package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.TypeFace;

/** Finds room on a drawing for the names of its parts, so that no two lie over each other. */
final class LabelPlacing {
  private final double size;
  private final Box drawing;
  private final List<Box> taken = new ArrayList<>();

  private record Box(double left, double top, double right, double bottom) {
    boolean holds(Box o) {
      return left <= o.left && o.right <= right && top <= o.top && o.bottom <= bottom;
    }

    boolean meets(Box o) {
      return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
    }
  }

  /**
   * @param edge of the panel; names stay in the box around it
   */
  LabelPlacing(double size, List<Point> edge) {
    this.size = size;
    this.drawing = around(edge);
  }

  /** Keeps a round spot free. */
  void keepFree(double x, double y, double radius) {
    taken.add(new Box(x - radius, y - radius, x + radius, y + radius));
  }

  /** Keeps a part free that is too small to have a name written on it. */
  void keepFree(List<Point> part) {
    Box box = around(part);
    if (box.right() - box.left() < 4 * size && box.bottom() - box.top() < 2 * size) {
      taken.add(box);
    }
  }

  /** The name of a part: in it where it fits, else beside it, else where it hides least. */
  Words name(String text, List<Point> part) {
    double width = TypeFace.width(text, size);
    List<Point> tries = spots(around(part), width);
    Point place =
        tries.stream().filter(p -> isFree(box(p, width))).findFirst().orElse(tries.get(0));
    taken.add(box(place, width));
    return Words.of(place.x(), place.y(), size, Align.MIDDLE, text);
  }

  private List<Point> spots(Box part, double width) {
    double middle = (part.left() + part.right()) / 2;
    double half = (part.top() + part.bottom()) / 2 + size * 0.35;
    double gap = size * 0.5;
    List<Point> spots = new ArrayList<>();
    if (part.right() - part.left() > width + gap && part.bottom() - part.top() > size * 1.5) {
      spots.add(new Point(middle, part.top() + size * 1.2));
      spots.add(new Point(middle, half));
      spots.add(new Point(middle, part.bottom() - gap));
    }
    spots.add(new Point(middle, part.bottom() + size * 1.1));
    spots.add(new Point(middle, part.top() - gap));
    spots.add(new Point(part.right() + gap + width / 2, half));
    spots.add(new Point(part.left() - gap - width / 2, half));
    for (double aside : new double[] {0, -0.25, 0.25, -0.5, 0.5}) {
      double x = middle + aside * (part.right() - part.left());
      spots.add(new Point(x, part.bottom() + size * 1.1));
      spots.add(new Point(x, part.bottom() + size * 2.4));
      spots.add(new Point(x, part.top() - size * 1.8));
    }
    return spots;
  }

  private boolean isFree(Box box) {
    return drawing.holds(box) && taken.stream().noneMatch(box::meets);
  }

  private Box box(Point base, double width) {
    return new Box(
        base.x() - width / 2, base.y() - size * 0.8, base.x() + width / 2, base.y() + size * 0.25);
  }

  private static Box around(List<Point> part) {
    return new Box(
        part.stream().mapToDouble(Point::x).min().orElse(0),
        part.stream().mapToDouble(Point::y).min().orElse(0),
        part.stream().mapToDouble(Point::x).max().orElse(0),
        part.stream().mapToDouble(Point::y).max().orElse(0));
  }
}
