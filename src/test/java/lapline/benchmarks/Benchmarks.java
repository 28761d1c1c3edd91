package lapline.benchmarks;

import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Measures the server that was just built, with an empty data folder and the demo workshop, and
 * prints a table. Every figure stands beside references taken in the same minutes, since the ratio
 * to them says more than the milliseconds of one machine.
 */
final class Benchmarks {
  private static final int STARTS = 3;
  // it tells its statistics of every session otherwise
  private static final Logger HIBERNATE = Logger.getLogger("org.hibernate");

  private Benchmarks() {}

  /**
   * @param given the built server's folder, a folder for the data, the port offset
   */
  public static void main(String[] given) throws Exception {
    Path home = Path.of(given[0]);
    Path data = Path.of(given[1]);
    int portOffset = Integer.parseInt(given[2]);
    HIBERNATE.setLevel(Level.WARNING);
    Table table = new Table(System.out);
    table.machine();
    ScorerBenchmark.run(table);
    StrokeBenchmark.run(table);
    BoardsBenchmark.run(table);
    for (int start = 1; start <= STARTS; start++) {
      try (FreshServer server = FreshServer.start(home, data, portOffset, false)) {
        table.say("First page, empty data folder: %.1f s", server.secondsToFirstPage());
      }
    }
    try (FreshServer server = FreshServer.start(home, data, portOffset, true)) {
      table.say("First page, telling the demo's story: %.1f s", server.secondsToFirstPage());
      table.say("Demo half year told: %.0f s after that", server.secondsToEndOfStory());
      new PagesBenchmark().run(table);
    }
    table.machine();
  }
}
