package lapline.practice.fit;

import java.util.List;
import java.util.stream.IntStream;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Point;

/** Even cells over a panel, row by row from the lower edge; each knows whether it is panel. */
final class PanelGrid {
  final int columns;
  final int rows;
  final double[] x;
  final double[] y;

  /** Numbers of the cells whose middle lies on the panel, and in no aperture. */
  final int[] onPanel;

  private PanelGrid(PanelOutline panel, int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    this.x = new double[columns * rows];
    this.y = new double[columns * rows];
    for (int i = 0; i < x.length; i++) {
      x[i] = (i % columns + 0.5) * panel.width() / columns;
      y[i] = (i / columns + 0.5) * panel.height() / rows;
    }
    this.onPanel = IntStream.range(0, x.length).filter(i -> isPanel(panel, x[i], y[i])).toArray();
  }

  /** The finest grid of about square cells within so many columns and rows. */
  static PanelGrid over(PanelOutline panel, int mostColumns, int mostRows) {
    double cell = Math.max(panel.width() / mostColumns, panel.height() / mostRows);
    return new PanelGrid(
        panel,
        Math.max(1, (int) Math.round(panel.width() / cell)),
        Math.max(1, (int) Math.round(panel.height() / cell)));
  }

  private static boolean isPanel(PanelOutline panel, double x, double y) {
    return (panel.outline().size() < 3 || encloses(panel.outline(), x, y))
        && panel.features().stream()
            .noneMatch(f -> f.kind().equals("aperture") && encloses(f.corners(), x, y));
  }

  /** Even-odd rule: a ray to the right crosses the outline an odd number of times. */
  private static boolean encloses(List<Point> corners, double x, double y) {
    boolean inside = false;
    for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
      Point a = corners.get(i);
      Point b = corners.get(j);
      if (a.y() > y != b.y() > y && x < a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
