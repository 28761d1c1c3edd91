package lapline.trade.hiding;

import java.util.Collections;
import java.util.List;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/** Coats to hiding from squares of a checker card that the eye still finds. */
public final class SquaresSeen {
  private SquaresSeen() {}

  /**
   * From all squares together.
   *
   * @param afterEachCoat squares still seen after coat 1, 2, …; 0 or more each, at least one coat.
   *     A card that comes through again later counts as seen until then.
   */
  public static CoatsToHiding coatsToHiding(List<Integer> afterEachCoat) {
    if (afterEachCoat.isEmpty()) {
      throw new MeasureException("coats looked at", 0, "1 or more");
    }
    afterEachCoat.forEach(s -> Valid.notNegative("squares seen", s));
    int lastSeen = 0;
    for (int coat = 1; coat <= afterEachCoat.size(); coat++) {
      lastSeen = afterEachCoat.get(coat - 1) > 0 ? coat : lastSeen;
    }
    return outcome(lastSeen, afterEachCoat.size());
  }

  /**
   * From each square by itself; the slowest decides.
   *
   * @param lastCoatSeen for each square the last coat through which it was seen, 0 for none
   * @param coats how many coats were looked at, 1 or more
   */
  public static CoatsToHiding ofEachSquare(List<Integer> lastCoatSeen, int coats) {
    if (lastCoatSeen.isEmpty()) {
      throw new MeasureException("squares", 0, "1 or more");
    }
    Valid.positive("coats", coats);
    lastCoatSeen.forEach(c -> Valid.between("last coat seen", c, 0, coats));
    return outcome(Collections.max(lastCoatSeen), coats);
  }

  private static CoatsToHiding outcome(int lastSeen, int coats) {
    return lastSeen == coats
        ? new CoatsToHiding.StillShowing(coats)
        : new CoatsToHiding.Vanished(lastSeen + 1);
  }
}
