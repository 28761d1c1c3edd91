package lapline.practice.pages;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
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
  private final List<List<Tile>> rows = new ArrayList<>();

  private record Corner(double x, double y, double film) {}

  /** One cell of the grid, with its corners in turn and the least and most film in it. */
  private record Tile(List<Corner> corners, double least, double most) {
    static Tile of(List<Corner> corners) {
      DoubleSummaryStatistics film = new DoubleSummaryStatistics();
      corners.forEach(c -> film.accept(c.film()));
      return new Tile(corners, film.getMin(), film.getMax());
    }

    boolean isWithin(double from, double to) {
      return least >= from && most < to;
    }

    boolean touches(double from, double to) {
      return most >= from && least < to;
    }

    boolean isCrossedBy(double film) {
      return most >= film && least < film;
    }

    List<List<Corner>> triangles() {
      Corner one = corners.get(0);
      Corner opposite = corners.get(2);
      double film = corners.stream().mapToDouble(Corner::film).average().orElse(Double.NaN);
      Corner middle = new Corner(mean(one.x(), opposite.x()), mean(one.y(), opposite.y()), film);
      List<List<Corner>> triangles = new ArrayList<>(4);
      for (int i = 0; i < 4; i++) {
        triangles.add(List.of(corners.get(i), corners.get((i + 1) % 4), middle));
      }
      return triangles;
    }
  }

  FilmBands(FilmField field, PanelScale scale) {
    this.grid = new FilmGrid(field);
    this.scale = scale;
    for (int row = 0; row < grid.rows() - 1; row++) {
      List<Tile> tiles = new ArrayList<>();
      for (int column = 0; column < grid.columns() - 1; column++) {
        tiles.add(Tile.of(corners(row, column)));
      }
      rows.add(tiles);
    }
  }

  /** The area with {@code least <= film < most}; runs of whole cells come as one ring. */
  List<List<Point>> between(double least, double most) {
    List<List<Point>> rings = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      List<Tile> tiles = rows.get(row);
      int column = 0;
      while (column < tiles.size()) {
        int end = wholeUntil(tiles, column, least, most);
        if (end > column) {
          rings.add(box(row, column, end));
          column = end;
        } else {
          addPart(rings, tiles.get(column), least, most);
          column++;
        }
      }
    }
    return rings;
  }

  private static void addPart(List<List<Point>> rings, Tile tile, double least, double most) {
    if (tile.touches(least, most)) {
      for (List<Corner> triangle : tile.triangles()) {
        addRing(rings, above(below(triangle, most), least));
      }
    }
  }

  /** The line of one build, as pieces of two points. */
  List<List<Point>> line(double film) {
    List<List<Point>> pieces = new ArrayList<>();
    for (List<Tile> tiles : rows) {
      for (Tile tile : tiles) {
        if (tile.isCrossedBy(film)) {
          addCrossings(pieces, tile, film);
        }
      }
    }
    return pieces;
  }

  private static void addCrossings(List<List<Point>> pieces, Tile tile, double film) {
    for (List<Corner> triangle : tile.triangles()) {
      List<Point> crossing = crossings(triangle, film);
      if (crossing.size() == 2) {
        pieces.add(crossing);
      }
    }
  }

  private static int wholeUntil(List<Tile> tiles, int from, double least, double most) {
    int column = from;
    while (column < tiles.size() && tiles.get(column).isWithin(least, most)) {
      column++;
    }
    return column;
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
