package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;

/** Where on a panel a gauge can be set down: an even grid that keeps off the rim. */
final class PanelSpots {
  /** A gauge does not sit flat nearer to the edge than this, metres; course assumption. */
  private static final double RIM = 0.015;

  private static final int COLUMNS = 17;
  private static final int ROWS = 25;
  private static final int LINE = 81;

  private PanelSpots() {}

  /** More rows than columns, since what lies across the strokes changes faster. */
  static List<Spot> of(PassPlan plan) {
    List<Spot> spots = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        spots.add(
            new Spot(
                RIM + (plan.width() - 2 * RIM) * column / (COLUMNS - 1),
                RIM + (plan.height() - 2 * RIM) * row / (ROWS - 1)));
      }
    }
    return spots;
  }

  /** Up through the middle of the panel, close enough together for any stripe. */
  static List<Spot> across(PassPlan plan) {
    List<Spot> line = new ArrayList<>();
    for (int i = 0; i < LINE; i++) {
      double y = RIM + (plan.height() - 2 * RIM) * i / (LINE - 1);
      line.add(new Spot(plan.width() / 2, y));
    }
    return line;
  }
}
