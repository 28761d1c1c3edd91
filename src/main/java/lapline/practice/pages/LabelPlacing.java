package lapline.practice.pages;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.TypeFace;

/**
 * Finds room on a drawing for the names of its parts, so that no two lie over each other and no
 * line runs through one.
 */
final class LabelPlacing {
  /** How far from its part a name may stand, in heights of the type; further off it misleads. */
  private static final int FURTHEST = 4;

  private final double size;
  private final Rectangle2D drawing;
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Line2D> lines = new ArrayList<>();

  /**
   * @param edge of the panel; names stay in the box around it and off its line
   */
  LabelPlacing(double size, List<Point> edge) {
    this.size = size;
    this.drawing = around(edge);
    keepOff(edge);
  }

  /** Keeps a round spot free. */
  void keepFree(double x, double y, double radius) {
    taken.add(new Rectangle2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
  }

  /**
   * Keeps the outline of a part free, and all of it where it is too small to have a name written on
   * it.
   */
  void keepFree(List<Point> part) {
    keepOff(part);
    Rectangle2D box = around(part);
    if (box.getWidth() < 4 * size && box.getHeight() < 2 * size) {
      taken.add(box);
    }
  }

  private void keepOff(List<Point> ring) {
    for (int i = 0; i < ring.size(); i++) {
      Point from = ring.get(i);
      Point to = ring.get((i + 1) % ring.size());
      lines.add(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
    }
  }

  /** The name of a part: in it where it fits, else beside it, else where it hides least. */
  Words name(String text, List<Point> part) {
    double width = TypeFace.width(text, size);
    List<Point> usual = spots(around(part), width);
    Point place =
        free(usual, width)
            .or(() -> free(near(around(part), width), width))
            .orElseGet(() -> leastHiding(usual, width));
    taken.add(box(place, width));
    return Words.of(place.x(), place.y(), size, Align.MIDDLE, text);
  }

  private Optional<Point> free(List<Point> spots, double width) {
    return spots.stream().filter(p -> hidden(box(p, width)) == 0).findFirst();
  }

  private List<Point> spots(Rectangle2D part, double width) {
    double middle = part.getCenterX();
    double half = part.getCenterY() + size * 0.35;
    double gap = size * 0.5;
    List<Point> spots = new ArrayList<>();
    if (part.getWidth() > width + gap && part.getHeight() > size * 1.5) {
      spots.add(new Point(middle, part.getMinY() + size * 1.2));
      spots.add(new Point(middle, half));
      spots.add(new Point(middle, part.getMaxY() - gap));
    }
    spots.add(new Point(middle, part.getMaxY() + size * 1.1));
    spots.add(new Point(middle, part.getMinY() - gap));
    spots.add(new Point(part.getMaxX() + gap + width / 2, half));
    spots.add(new Point(part.getMinX() - gap - width / 2, half));
    return spots;
  }

  /** All spots near a part, the nearest first. */
  private List<Point> near(Rectangle2D part, double width) {
    double reach = FURTHEST * size;
    double step = size / 3;
    List<Point> near = new ArrayList<>();
    for (double y = part.getMinY() - reach; y <= part.getMaxY() + reach; y += step) {
      double aside = reach + width / 2;
      for (double x = part.getMinX() - aside; x <= part.getMaxX() + aside; x += step) {
        near.add(new Point(x, y));
      }
    }
    near.sort(Comparator.comparingDouble(p -> apart(box(p, width), part)));
    return near;
  }

  private static double apart(Rectangle2D one, Rectangle2D other) {
    double across =
        Math.max(one.getMinX(), other.getMinX()) - Math.min(one.getMaxX(), other.getMaxX());
    double down =
        Math.max(one.getMinY(), other.getMinY()) - Math.min(one.getMaxY(), other.getMaxY());
    return Math.hypot(Math.max(0, across), Math.max(0, down));
  }

  private Point leastHiding(List<Point> tries, double width) {
    return tries.stream()
        .min(Comparator.comparingLong(p -> hidden(box(p, width))))
        .orElse(tries.get(0));
  }

  /** How many things lie under a name, the edge of the drawing among them. */
  private long hidden(Rectangle2D box) {
    return taken.stream().filter(box::intersects).count()
        + lines.stream().filter(l -> l.intersects(box)).count()
        + (drawing.contains(box) ? 0 : 2);
  }

  private Rectangle2D box(Point base, double width) {
    return new Rectangle2D.Double(base.x() - width / 2, base.y() - size * 0.8, width, size * 1.05);
  }

  private static Rectangle2D around(List<Point> part) {
    Rectangle2D box = new Rectangle2D.Double(part.get(0).x(), part.get(0).y(), 0, 0);
    part.forEach(p -> box.add(p.x(), p.y()));
    return box;
  }
}
