package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;

/** Where on a panel a gauge can be set down, and the even grids that its film is looked at on. */
final class PanelSpots {
  /**
   * Nearer to an edge a film gauge that was set on a sheet reads wrongly, metres: ASTM D7091 and
   * SSPC-PA 2 stay 1 in away, from memory. On a small panel it is less, so that there is room.
   */
  private static final double RIM = 0.025;

  private static final double MOST_RIM = 1 / 8.0;

  private static final int COLUMNS = 17;
  private static final int ROWS = 25;
  private static final int LINE = 81;

  private PanelSpots() {}

  /**
   * An even grid that keeps off the rim; more rows than columns, since what lies across the strokes
   * changes faster.
   */
  static List<Spot> of(PassPlan plan) {
    List<Spot> spots = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        spots.add(
            new Spot(
                along(plan.width(), column / (COLUMNS - 1.0)),
                along(plan.height(), row / (ROWS - 1.0))));
      }
    }
    return spots;
  }

  /** As many, one in the middle of each of as many equal parts of the whole panel. */
  static List<Spot> area(PassPlan plan) {
    List<Spot> spots = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        spots.add(
            new Spot(plan.width() * (column + 0.5) / COLUMNS, plan.height() * (row + 0.5) / ROWS));
      }
    }
    return spots;
  }

  /** Up through the middle of the panel, close enough together for any stripe. */
  static List<Spot> across(PassPlan plan) {
    List<Spot> line = new ArrayList<>();
    for (int i = 0; i < LINE; i++) {
      line.add(new Spot(plan.width() / 2, along(plan.height(), i / (LINE - 1.0))));
    }
    return line;
  }

  /** From rim to rim. */
  private static double along(double side, double share) {
    double rim = Math.min(RIM, MOST_RIM * side);
    return rim + (side - 2 * rim) * share;
  }
}
