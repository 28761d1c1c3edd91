package lapline.benchmarks;

import java.util.concurrent.TimeUnit;
import lapline.practice.CriteriaOfPanel;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * All verdicts of a clear panel with 96 readings and its practice score; once as they are, and once
 * with the share of the area too, for which a film is estimated over the whole panel.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CriteriaBenchmark {
  private final CriteriaOfPanel verdicts = CriteriaOfPanel.clear().withoutShare();
  private final CriteriaOfPanel withShare = CriteriaOfPanel.clear();

  @Benchmark
  public double verdicts() {
    return verdicts.score();
  }

  @Benchmark
  public double verdictsWithShareOfArea() {
    return withShare.score();
  }
}
