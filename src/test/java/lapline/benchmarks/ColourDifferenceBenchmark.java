package lapline.benchmarks;

import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import lapline.trade.colour.Ciede2000;
import lapline.trade.colour.ColourDifferences;
import lapline.trade.colour.Lab;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** CIEDE2000 of a million pairs a few units apart. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ColourDifferenceBenchmark {
  static final int PAIRS = 1_000_000;

  private Lab[] first;
  private Lab[] second;

  /** L, a, b of both colours of each pair, the same for every library. */
  static double[] pairs() {
    RandomGenerator chance = new Random(1);
    double[] pairs = new double[6 * PAIRS];
    for (int i = 0; i < pairs.length; i += 6) {
      pairs[i] = 5 + 90 * chance.nextDouble();
      pairs[i + 1] = 120 * chance.nextDouble() - 60;
      pairs[i + 2] = 120 * chance.nextDouble() - 60;
      for (int j = 0; j < 3; j++) {
        pairs[i + 3 + j] = pairs[i + j] + 4 * chance.nextDouble() - 2;
      }
    }
    return pairs;
  }

  @Setup
  public void colours() {
    double[] pairs = pairs();
    first = new Lab[PAIRS];
    second = new Lab[PAIRS];
    for (int i = 0; i < PAIRS; i++) {
      first[i] = new Lab(pairs[6 * i], pairs[6 * i + 1], pairs[6 * i + 2]);
      second[i] = new Lab(pairs[6 * i + 3], pairs[6 * i + 4], pairs[6 * i + 5]);
    }
  }

  /** Their sum, so that it can be held against other libraries'. */
  @Benchmark
  public double million() {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += Ciede2000.of(first[i], second[i]);
    }
    return sum;
  }

  /** The same, all at once. */
  @Benchmark
  public double millionAtOnce() {
    double sum = 0;
    for (double difference : ColourDifferences.of(Arrays.asList(first), Arrays.asList(second))) {
      sum += difference;
    }
    return sum;
  }
}
