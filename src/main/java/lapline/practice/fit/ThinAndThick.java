package lapline.practice.fit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import lapline.practice.FilmField.Area;
import lapline.trade.measure.TargetRange;

/** Finds the connected areas of a film map that lie outside its range, and names where they lie. */
final class ThinAndThick {
  private static final int MOST_AREAS = 4;

  /** Areas smaller than this share of the panel are not named. */
  private static final double LEAST_SHARE = 0.02;

  private final PanelGrid grid;
  private final double[] map;
  private final TargetRange target;
  private final boolean[] seen;

  private ThinAndThick(PanelGrid grid, double[] map, TargetRange target) {
    this.grid = grid;
    this.map = map;
    this.target = target;
    this.seen = new boolean[map.length];
  }

  /**
   * @param map film by cell of the grid, metres; NaN off the panel
   * @return at most four, those with the most film missing or over first
   */
  static List<Area> areas(PanelGrid grid, double[] map, TargetRange target) {
    return new ThinAndThick(grid, map, target).areas();
  }

  private record Weighed(Area area, double film) {}

  private List<Area> areas() {
    List<Weighed> found = new ArrayList<>();
    for (int cell : grid.onPanel) {
      if (!seen[cell] && side(cell) != 0) {
        List<Integer> cells = connected(cell);
        if (cells.size() >= LEAST_SHARE * grid.onPanel.length) {
          found.add(weighed(cells, side(cell)));
        }
      }
    }
    return found.stream()
        .sorted(Comparator.comparingDouble((Weighed w) -> -w.film))
        .limit(MOST_AREAS)
        .map(Weighed::area)
        .toList();
  }

  private Weighed weighed(List<Integer> cells, int side) {
    double most = 0;
    double sum = 0;
    for (int cell : cells) {
      double by = Math.abs(target.outsideBy(map[cell]));
      most = Math.max(most, by);
      sum += by;
    }
    double share = cells.size() / (double) grid.onPanel.length;
    return new Weighed(new Area(AreaName.of(grid, cells), side < 0, most, share), sum);
  }

  /** −1 thin, 1 thick, 0 in range or off the panel. */
  private int side(int cell) {
    return Double.isNaN(map[cell]) ? 0 : (int) Math.signum(target.outsideBy(map[cell]));
  }

  /** All cells on the same side that hang together edge to edge. */
  private List<Integer> connected(int start) {
    List<Integer> cells = new ArrayList<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    seen[start] = true;
    while (!open.isEmpty()) {
      int cell = open.pop();
      cells.add(cell);
      int column = cell % grid.columns;
      look(cell - grid.columns, true, start, open);
      look(cell + grid.columns, true, start, open);
      look(cell - 1, column > 0, start, open);
      look(cell + 1, column < grid.columns - 1, start, open);
    }
    return cells;
  }

  private void look(int cell, boolean sameRow, int start, Deque<Integer> open) {
    if (sameRow && cell >= 0 && cell < map.length && !seen[cell] && side(cell) == side(start)) {
      seen[cell] = true;
      open.push(cell);
    }
  }
}
