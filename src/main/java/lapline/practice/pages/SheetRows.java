package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts the blocks of a sheet into rows of columns so that together they take the least height. The
 * blocks keep their order: along the rows, and down each column of a row.
 */
final class SheetRows {
  private static final int MOST_COLUMNS = 3;
  private static final int MOST_BLOCKS = 4;
  private static final double NARROWEST = 30;
  private static final double STEP = 8;
  private static final int TENTHS = 10;
  private static final int WIDEST = 300;

  private final double scale;

  /** Of each block by its width in tenths of a millimetre; not a number until it was tried. */
  private final Map<SheetBlock, double[]> heights = new IdentityHashMap<>();

  /** A way to lay blocks and the height it takes. */
  private record Laid(SheetRow row, double high) {}

  /**
   * @param scale of rows and type
   */
  SheetRows(double scale) {
    this.scale = scale;
  }

  /**
   * Rows one below the other.
   *
   * @param high all of them
   */
  record Lowest(List<SheetRow> rows, double high) {}

  /** The lowest rows in this width; from the last block up, so that each end is sought once. */
  Lowest lowest(List<SheetBlock> blocks, double width) {
    int count = blocks.size();
    double[] below = new double[count + 1];
    SheetRow[] rows = new SheetRow[count];
    int[] ends = new int[count];
    for (int from = count - 1; from >= 0; from--) {
      below[from] = Double.POSITIVE_INFINITY;
      for (int to = from + 1; to <= Math.min(count, from + MOST_BLOCKS); to++) {
        double room = below[from] - below[to];
        Laid laid = row(blocks.subList(from, to), width, MOST_COLUMNS, room);
        if (laid != null) {
          below[from] = laid.high() + below[to];
          rows[from] = laid.row();
          ends[from] = to;
        }
      }
    }
    List<SheetRow> lowest = new ArrayList<>();
    for (int from = 0; from < count; from = ends[from]) {
      lowest.add(rows[from]);
    }
    return new Lowest(lowest, below[0]);
  }

  /**
   * All of the blocks in one column, or some in a first column and the others beside it.
   *
   * @return null where nothing is lower than {@code limit}
   */
  private Laid row(List<SheetBlock> blocks, double width, int columns, double limit) {
    double alone = high(blocks, width);
    Laid lowest = alone < limit ? new Laid(row(blocks, width), alone) : null;
    double least = Math.min(alone, limit);
    for (int first = 1; columns > 1 && first < blocks.size(); first++) {
      List<SheetBlock> stack = blocks.subList(0, first);
      for (double wide = NARROWEST; wide <= width - NARROWEST; wide += STEP) {
        double left = high(stack, wide);
        if (left < least) {
          double rest = width - wide - SheetRow.GUTTER;
          Laid right = row(blocks.subList(first, blocks.size()), rest, columns - 1, least);
          if (right != null) {
            least = Math.max(left, right.high());
            lowest = new Laid(right.row().after(new SheetRow.Stack(stack, wide)), least);
          }
        }
      }
    }
    return lowest;
  }

  private static SheetRow row(List<SheetBlock> blocks, double width) {
    return new SheetRow(List.of(new SheetRow.Stack(blocks, width)));
  }

  /** Of blocks below each other; without end where the column is too narrow for one of them. */
  private double high(List<SheetBlock> blocks, double width) {
    double high = 0;
    for (SheetBlock block : blocks) {
      if (block.least() > width) {
        return Double.POSITIVE_INFINITY;
      }
      high += high(block, width);
    }
    return high;
  }

  private double high(SheetBlock block, double width) {
    double[] known = heights.computeIfAbsent(block, b -> untried());
    int tenths = (int) Math.round(width * TENTHS);
    if (Double.isNaN(known[tenths])) {
      known[tenths] = block.high(width, scale);
    }
    return known[tenths];
  }

  private static double[] untried() {
    double[] heights = new double[WIDEST * TENTHS];
    Arrays.fill(heights, Double.NaN);
    return heights;
  }
}
