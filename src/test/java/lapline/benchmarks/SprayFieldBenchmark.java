package lapline.benchmarks;

import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import lapline.trade.spray.CoatField;
import lapline.trade.spray.DepositField;
import lapline.trade.spray.FanProfile;
import lapline.trade.spray.FilmGrid;
import lapline.trade.spray.Pass;
import lapline.trade.spray.Stroke;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** 36 passes, three coats of twelve, on a grid of 200 × 200; against every pass at every place. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SprayFieldBenchmark {
  static final int CELLS = 200;
  private static final int PASSES = 36;
  private static final FilmGrid GRID = FilmGrid.ofPanel(0.6, 0.8, CELLS, CELLS);

  /** How the hand moves. */
  @Param({"steady", "arcing"})
  public String hand;

  private CoatField coat;

  @Setup
  public void spray() {
    Stroke stroke = hand.equals("steady") ? Stroke.steady() : Stroke.arcing(0.3, 0.8);
    FanProfile fan = FanProfile.beta(2.3);
    coat =
        new CoatField(
            IntStream.range(0, PASSES)
                .mapToObj(i -> new Pass(0.07 * (i % 12), 0.23, 1e-5, fan, stroke))
                .toList());
  }

  @Benchmark
  public double field() {
    return DepositField.of(coat, GRID).at(CELLS / 2, CELLS / 2);
  }

  @Benchmark
  public double tripleLoop() {
    double[] film = new double[CELLS * CELLS];
    for (Pass pass : coat.passes()) {
      for (int row = 0; row < CELLS; row++) {
        double y = (row + 0.5) / CELLS * 0.8;
        for (int column = 0; column < CELLS; column++) {
          film[row * CELLS + column] += pass.filmAt((column + 0.5) / CELLS * 0.6, y);
        }
      }
    }
    return film[CELLS / 2 * CELLS + CELLS / 2];
  }
}
