package lapline.benchmarks;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import lapline.board.BoardShop;

/**
 * All questions that each board asks of the database, with {@value #PEOPLE} people of twenty panels
 * each in H2, in memory. References: one person by key, and the same board for {@value #FEW}
 * people.
 */
final class BoardsBenchmark {
  private static final int PEOPLE = 2000;
  private static final int FEW = 14;

  /** For each of the four skills. */
  private static final int PANELS = 5;

  private static final int WARM = 20;
  private static final int MEASURED = 20;

  private BoardsBenchmark() {}

  static void run(Table table) throws Exception {
    table.heading("Queries, 2,000 people x 20 panels", "to one row", "to 14 people");
    try (BoardShop small = BoardShop.of(FEW, PANELS);
        BoardShop large = BoardShop.of(PEOPLE, PANELS)) {
      Map<String, Times> few = times(small);
      Map<String, Times> many = times(large);
      Times row = many.get("one person");
      many.forEach((name, times) -> table.line(name, times, row, few.get(name)));
    }
  }

  private static Map<String, Times> times(BoardShop shop) {
    Map<String, Runnable> pages = new LinkedHashMap<>(new TreeMap<>(shop.pages()));
    pages.put("one person", shop.onePerson());
    Map<String, Times> all = new LinkedHashMap<>();
    for (int turn = 0; turn < WARM + MEASURED; turn++) {
      boolean counts = turn >= WARM;
      pages.forEach(
          (name, page) -> {
            long began = System.nanoTime();
            shop.afresh(page);
            if (counts) {
              all.computeIfAbsent(name, n -> new Times()).add(System.nanoTime() - began);
            }
          });
    }
    return all;
  }
}
