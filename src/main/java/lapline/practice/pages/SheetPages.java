package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;

/**
 * Which rows of a sheet stand on each of its pages, and how large.
 *
 * @param scale of rows and type
 */
record SheetPages(List<List<SheetRow>> pages, double scale) {
  /** Rows no lower than this part of their usual height, so that a pencil finds room. */
  private static final int LOWEST_PERCENT = 92;

  private static final int HIGHEST_PERCENT = 130;

  /** The largest that a sheet grows. */
  static final double HIGHEST = HIGHEST_PERCENT / 100.0;

  /** Room on a page for its rows at some scale. */
  interface Room {
    double at(double scale);
  }

  /** One page, as large as it can be; else as many pages as it takes, in usual size. */
  static SheetPages of(List<SheetRow> rows, Room room) {
    SheetPages largest = null;
    int fits = LOWEST_PERCENT - 1;
    int tooLarge = HIGHEST_PERCENT + 1;
    while (tooLarge - fits > 1) {
      int percent = (fits + tooLarge) / 2;
      SheetPages pages = at(percent / 100.0, rows, room);
      largest = pages.isOne() ? pages : largest;
      fits = pages.isOne() ? percent : fits;
      tooLarge = pages.isOne() ? tooLarge : percent;
    }
    return largest == null ? at(1, rows, room) : largest;
  }

  private static SheetPages at(double scale, List<SheetRow> rows, Room room) {
    List<List<SheetRow>> pages = new ArrayList<>();
    double left = 0;
    for (SheetRow row : rows) {
      double high = row.high(scale);
      if (pages.isEmpty() || high > left) {
        pages.add(new ArrayList<>());
        left = room.at(scale);
      }
      pages.get(pages.size() - 1).add(row);
      left -= high;
    }
    return new SheetPages(pages, scale);
  }

  boolean isOne() {
    return pages.size() == 1;
  }

  /** Whether it is one page whose boxes have their usual height, or all that the other's have. */
  boolean isAsGoodAs(SheetPages other) {
    return isOne() && scale >= Math.min(1, other.scale);
  }
}
