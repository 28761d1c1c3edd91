package lapline.benchmarks;

import java.nio.file.Path;

/**
 * Measures the server that was just built, with an empty data folder and the demo workshop, and
 * prints a table. Every figure stands beside references taken in the same minutes, since the ratio
 * to them says more than the milliseconds of one machine.
 */
final class Benchmarks {
  private Benchmarks() {}

  /**
   * @param given the built server's folder, a folder for the data, the port offset
   */
  public static void main(String[] given) throws Exception {
    Table table = new Table(System.out);
    table.machine();
    ScorerBenchmark.run(table);
    BoardsBenchmark.run(table);
    try (FreshServer server =
        FreshServer.start(Path.of(given[0]), Path.of(given[1]), Integer.parseInt(given[2]))) {
      table.say("First page after start: %.1f s", server.secondsToFirstPage());
      table.say("Demo half year told: %.0f s after that", server.secondsToEndOfStory());
      new PagesBenchmark().run(table);
    }
    table.machine();
  }
}
