package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Point;
import lapline.practice.FilmField;

/**
 * Areas of a panel whose film lies between two builds, and lines of one build, as rings for a
 * drawing. Each cell of the grid is cut into four triangles about its middle, in which the film is
 * taken as a plane.
 */
final class FilmBands {
  private final FilmGrid grid;
  private final PanelScale scale;

  private record Corner(double x, double y, double film) {}

  FilmBands(FilmField field, PanelScale scale) {
    this.grid = new FilmGrid(field);
    this.scale = scale;
  }

  /** The area with {@code least <= film < most}; runs of whole cells come as one ring. */
  List<List<Point>> between(double least, double most) {
    List<List<Point>> rings = new ArrayList<>();
    for (int row = 0; row < grid.rows() - 1; row++) {
      int column = 0;
      while (column < grid.columns() - 1) {
        int end = wholeUntil(row, column, least, most);
        if (end > column) {
          rings.add(box(row, column, end));
          column = end;
        } else {
          for (List<Corner> triangle : triangles(row, column)) {
            addRing(rings, above(below(triangle, most), least));
          }
          column++;
        }
      }
    }
    return rings;
  }

  /** The line of one build, as pieces of two points. */
  List<List<Point>> line(double film) {
    List<List<Point>> pieces = new ArrayList<>();
    for (int row = 0; row < grid.rows() - 1; row++) {
      for (int column = 0; column < grid.columns() - 1; column++) {
        for (List<Corner> triangle : triangles(row, column)) {
          List<Point> crossing = crossings(triangle, film);
          if (crossing.size() == 2) {
            pieces.add(crossing);
          }
        }
      }
    }
    return pieces;
  }

  private int wholeUntil(int row, int from, double least, double most) {
    int column = from;
    while (column < grid.columns() - 1 && whole(row, column, least, most)) {
      column++;
    }
    return column;
  }

  private boolean whole(int row, int column, double least, double most) {
    for (Corner c : corners(row, column)) {
      if (!(c.film() >= least && c.film() < most)) {
        return false;
      }
    }
    return true;
  }

  private Corner corner(int row, int column) {
    return new Corner(scale.x(grid.x(column)), scale.y(grid.y(row)), grid.film(row, column));
  }

  private List<Corner> corners(int row, int column) {
    return List.of(
        corner(row, column),
        corner(row, column + 1),
        corner(row + 1, column + 1),
        corner(row + 1, column));
  }

  private List<List<Corner>> triangles(int row, int column) {
    List<Corner> around = corners(row, column);
    Corner middle =
        new Corner(
            mean(around.get(0).x(), around.get(2).x()),
            mean(around.get(0).y(), around.get(2).y()),
            around.stream().mapToDouble(Corner::film).average().orElse(Double.NaN));
    List<List<Corner>> triangles = new ArrayList<>(4);
    for (int i = 0; i < 4; i++) {
      triangles.add(List.of(around.get(i), around.get((i + 1) % 4), middle));
    }
    return triangles;
  }

  private List<Point> box(int row, int from, int to) {
    double left = scale.x(grid.x(from));
    double right = scale.x(grid.x(to));
    double low = scale.y(grid.y(row));
    double high = scale.y(grid.y(row + 1));
    return List.of(
        new Point(left, low), new Point(right, low), new Point(right, high), new Point(left, high));
  }

  private static List<Corner> above(List<Corner> ring, double level) {
    return cut(ring, level, 1);
  }

  private static List<Corner> below(List<Corner> ring, double level) {
    return cut(ring, level, -1);
  }

  /** Sutherland and Hodgman's cut of a ring by one plane; open levels cut nothing. */
  private static List<Corner> cut(List<Corner> ring, double level, int side) {
    if (Double.isInfinite(level)) {
      return ring;
    }
    List<Corner> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Corner here = ring.get(i);
      Corner next = ring.get((i + 1) % ring.size());
      boolean in = side * (here.film() - level) >= 0;
      if (in) {
        kept.add(here);
      }
      if (in != (side * (next.film() - level) >= 0)) {
        kept.add(between(here, next, level));
      }
    }
    return kept;
  }

  private static Corner between(Corner a, Corner b, double level) {
    double share = (level - a.film()) / (b.film() - a.film());
    return new Corner(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()), level);
  }

  private static List<Point> crossings(List<Corner> triangle, double level) {
    List<Point> found = new ArrayList<>(2);
    for (int i = 0; i < 3; i++) {
      Corner a = triangle.get(i);
      Corner b = triangle.get((i + 1) % 3);
      if (a.film() >= level != b.film() >= level) {
        Corner c = between(a, b, level);
        found.add(new Point(c.x(), c.y()));
      }
    }
    return found;
  }

  private static void addRing(List<List<Point>> rings, List<Corner> ring) {
    if (ring.size() > 2) {
      rings.add(ring.stream().map(c -> new Point(c.x(), c.y())).toList());
    }
  }

  private static double mean(double a, double b) {
    return (a + b) / 2;
  }
}
