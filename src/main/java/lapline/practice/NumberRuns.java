package lapline.practice;

import java.util.List;

/** Numbers of places, coats or rows as they are told in a sentence: '2, 4–14'. */
public final class NumberRuns {
  private NumberRuns() {}

  /**
   * @param rising each larger than the one before; runs of three and more are drawn together
   */
  public static String of(List<Integer> rising) {
    StringBuilder written = new StringBuilder();
    for (int from = 0, to; from < rising.size(); from = to + 1) {
      to = endOfRun(rising, from);
      written.append(from > 0 ? ", " : "").append(rising.get(from));
      if (to > from) {
        written.append(to == from + 1 ? ", " : "–").append(rising.get(to));
      }
    }
    return written.toString();
  }

  private static int endOfRun(List<Integer> rising, int from) {
    int to = from;
    while (to + 1 < rising.size() && rising.get(to + 1) == rising.get(to) + 1) {
      to++;
    }
    return to;
  }
}
