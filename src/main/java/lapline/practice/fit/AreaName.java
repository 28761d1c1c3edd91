package lapline.practice.fit;

import java.util.List;

/** Names where on a panel an area lies, as a person at the panel would; gives a message key. */
final class AreaName {
  /** An area that reaches over this share of the panel runs along it. */
  private static final double RUNS_ALONG = 0.7;

  private static final double WHOLE = 0.8;
  private static final double LARGE = 0.5;

  private AreaName() {}

  static String of(PanelGrid grid, List<Integer> cells) {
    double[] x = cells.stream().mapToDouble(c -> (c % grid.columns + 0.5) / grid.columns).toArray();
    double[] y = cells.stream().mapToDouble(c -> (c / grid.columns + 0.5) / grid.rows).toArray();
    boolean along = reach(x) >= RUNS_ALONG;
    boolean up = reach(y) >= RUNS_ALONG;
    if (along && up) {
      return wide(grid, cells);
    }
    if (along) {
      return "area." + third(mean(y), "lower-edge", "band-across", "upper-edge");
    }
    return up
        ? "area." + third(mean(x), "left-end", "middle-of-strokes", "right-end")
        : spot(mean(x), mean(y));
  }

  private static String wide(PanelGrid grid, List<Integer> cells) {
    double share = cells.size() / (double) grid.onPanel.length;
    int middle = grid.rows / 2 * grid.columns + grid.columns / 2;
    if (share >= WHOLE) {
      return "area.whole-panel";
    }
    // open in the middle: it runs round the rim
    return share < LARGE || cells.contains(middle) ? "area.large-part" : "area.all-round";
  }

  private static String spot(double x, double y) {
    String height = third(y, "lower", "middle", "upper");
    String side = third(x, "left", "middle", "right");
    if (height.equals("middle")) {
      return "area." + third(x, "left-end", "middle", "right-end");
    }
    return "area." + (side.equals("middle") ? height + "-middle" : height + "-" + side + "-corner");
  }

  private static String third(double at, String first, String second, String third) {
    return at < 1 / 3.0 ? first : at <= 2 / 3.0 ? second : third;
  }

  private static double reach(double[] at) {
    double least = 1;
    double most = 0;
    for (double a : at) {
      least = Math.min(least, a);
      most = Math.max(most, a);
    }
    return most - least;
  }

  private static double mean(double[] at) {
    double sum = 0;
    for (double a : at) {
      sum += a;
    }
    return sum / at.length;
  }
}
