package lapline.benchmarks;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Measures the science in one run with JMH, each figure beside what it is to be held against:
 * deposit field against a plain triple loop, colour difference against libraries of another
 * language on the same pairs, and the criteria of a panel on one core.
 */
public final class ScienceBenchmarks {
  private static final String ALLOCATED = "gc.alloc.rate.norm";

  private final Table table = new Table(System.out);
  private final Map<String, RunResult> results = new HashMap<>();

  private ScienceBenchmarks() {}

  /**
   * @param given a folder for what is fetched
   */
  public static void main(String[] given) throws RunnerException {
    ScienceBenchmarks all = new ScienceBenchmarks();
    all.table.machine();
    all.run();
    all.field("steady");
    all.field("arcing");
    all.colour(new NodeLibraries(Path.of(given[0])));
    all.criteria("verdicts", "without the share of the area");
    all.criteria("verdictsWithShareOfArea", "with it (the film of the whole panel)");
    all.table.machine();
  }

  private void run() throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include(named(SprayFieldBenchmark.class))
            .include(named(ColourDifferenceBenchmark.class))
            .include(named(CriteriaBenchmark.class))
            .forks(1)
            .jvmArgsAppend("-XX:+UseSerialGC")
            .warmupIterations(3)
            .warmupTime(TimeValue.seconds(1))
            .measurementIterations(5)
            .measurementTime(TimeValue.seconds(1))
            .addProfiler(GCProfiler.class)
            .verbosity(VerboseMode.SILENT)
            .build();
    Collection<RunResult> found = new Runner(options).run();
    found.forEach(r -> results.put(key(r), r));
  }

  private static String named(Class<?> benchmark) {
    return benchmark.getName().replace(".", "\\.") + "\\.";
  }

  private static String key(RunResult result) {
    String hand = result.getParams().getParam("hand");
    String name = result.getParams().getBenchmark();
    return name.substring(name.lastIndexOf('.') + 1) + (hand == null ? "" : " " + hand);
  }

  /** Microseconds for one call. */
  private double score(String key) {
    return results.get(key).getPrimaryResult().getScore();
  }

  private void field(String hand) {
    double quick = score("field " + hand);
    double plain = score("tripleLoop " + hand);
    table.say(
        "Deposit field, 36 passes on 200 x 200, %s hand: %.0f us; plain triple loop %.0f us, x %.1f",
        hand, quick, plain, plain / quick);
  }

  private void colour(NodeLibraries libraries) {
    double single = score("million") / 1000;
    double own = score("millionAtOnce") / 1000;
    double[] pairs = ColourDifferenceBenchmark.pairs();
    NodeLibraries.Outcome outcome = libraries.time(pairs);
    table.say(
        "CIEDE2000 of a million pairs, on one core: %.1f ms at once, %.0f ms one by one",
        own, single);
    if (!outcome.whyNot().isEmpty()) {
      table.say("  other libraries not measured: %s", outcome.whyNot());
    }
    for (NodeLibraries.Timed t : outcome.libraries()) {
      table.say(
          "  %s %s: %.0f ms, x %.1f, one by one x %.1f (sum of differences %s)",
          t.name(),
          t.version(),
          t.milliseconds(),
          t.milliseconds() / own,
          t.milliseconds() / single,
          sum(t.sum()));
    }
  }

  private static String sum(double theirs) {
    ColourDifferenceBenchmark benchmark = new ColourDifferenceBenchmark();
    benchmark.colours();
    double apart = Math.abs(theirs / benchmark.millionAtOnce() - 1);
    return apart < 1e-9 ? "as ours" : "apart from ours by " + apart;
  }

  private void criteria(String key, String what) {
    double took = score(key);
    Result<?> allocated = results.get(key).getSecondaryResults().get(ALLOCATED);
    table.say(
        "All criteria of a clear panel, 96 readings, %s: %.1f us, %.0f a second on one core,"
            + " %.0f kB allocated each",
        what, took, 1e6 / took, allocated == null ? Double.NaN : allocated.getScore() / 1024);
  }
}
