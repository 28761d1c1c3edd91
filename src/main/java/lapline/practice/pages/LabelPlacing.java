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
  private final double left;
  private final double right;
  private final List<Box> taken = new ArrayList<>();

  private record Box(double left, double top, double right, double bottom) {
    boolean meets(Box o) {
      return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
    }
  }

  /**
   * @param left where the drawing begins; names stay between it and {@code right}
   */
  LabelPlacing(double size, double left, double right) {
    this.size = size;
    this.left = left;
    this.right = right;
  }

  /** Keeps a round spot free. */
  void keepFree(double x, double y, double radius) {
    taken.add(new Box(x - radius, y - radius, x + radius, y + radius));
  }

  /** The name of a part: in it where it fits, else beside it, else where it hides least. */
  Words name(String text, List<Point> part) {
    double width = TypeFace.width(text, size);
    Box around = around(part);
    double middle = (around.left() + around.right()) / 2;
    double half = (around.top() + around.bottom()) / 2 + size * 0.35;
    double gap = size * 0.5;
    List<Point> tries = new ArrayList<>();
    if (around.right() - around.left() > width + gap) {
      tries.add(new Point(middle, around.top() + size * 1.2));
      tries.add(new Point(middle, half));
      tries.add(new Point(middle, around.bottom() - gap));
    }
    tries.add(new Point(middle, around.bottom() + size * 1.1));
    tries.add(new Point(middle, around.top() - gap));
    tries.add(new Point(around.right() + gap + width / 2, half));
    tries.add(new Point(around.left() - gap - width / 2, half));
    tries.add(new Point(middle, around.bottom() + size * 2.4));
    tries.add(new Point(middle, around.top() - size * 1.8));
    Point place =
        tries.stream().filter(p -> isFree(box(p, width))).findFirst().orElse(tries.get(0));
    taken.add(box(place, width));
    return Words.of(place.x(), place.y(), size, Align.MIDDLE, text);
  }

  private boolean isFree(Box box) {
    return box.left() >= left && box.right() <= right && taken.stream().noneMatch(box::meets);
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
