package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lapline.pages.drawing.Point;

/**
 * Finds room for the letters of further places on a drawing, so that none hides a numbered place: a
 * letter stands on its place where that is free, else as near as it can.
 */
final class SpotLetters {
  private static final int DIRECTIONS = 24;

  /** How far a letter may stand from its place, in radii; further off it misleads. */
  private static final double FURTHEST = 8;

  private final double radius;
  private final double width;
  private final double height;
  private final double margin;
  private final List<Point> taken = new ArrayList<>();

  /**
   * @param radius of a place's circle
   * @param margin that the drawing has around the panel of this width and height
   */
  SpotLetters(double radius, double width, double height, double margin) {
    this.radius = radius;
    this.width = width;
    this.height = height;
    this.margin = margin;
  }

  /** A number stands on its place, which is kept free from then on. */
  Point number(Point place) {
    taken.add(place);
    return place;
  }

  /** Where the letter of this place stands; on the place itself where nothing else is free. */
  Point letter(Point place) {
    Point found =
        tries(place).stream()
            .filter(this::isFree)
            .min(Comparator.comparingDouble(p -> apart(p, place)))
            .orElse(place);
    taken.add(found);
    return found;
  }

  private List<Point> tries(Point place) {
    List<Point> tries = new ArrayList<>(List.of(place));
    for (double far = radius / 2; far <= FURTHEST * radius; far += radius / 4) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        tries.add(new Point(place.x() + far * Math.cos(angle), place.y() + far * Math.sin(angle)));
      }
    }
    return tries;
  }

  private boolean isFree(Point p) {
    double edge = radius - margin;
    boolean inside =
        p.x() >= edge && p.x() <= width - edge && p.y() >= edge && p.y() <= height - edge;
    return inside && taken.stream().allMatch(t -> apart(p, t) >= 2 * radius);
  }

  private static double apart(Point a, Point b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }
}
