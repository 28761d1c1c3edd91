package lapline.trade.spray;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * The film that a set of passes leaves over the panel: the sum of what each of them leaves. Flow
 * after spraying is left out.
 */
public record CoatField(List<Pass> passes) {

  public CoatField {
    passes = List.copyOf(passes);
  }

  /**
   * Passes like the first one, evenly spaced upwards.
   *
   * @param spacing between centrelines, metres, more than 0
   * @param count 1 or more
   */
  public static CoatField evenlySpaced(Pass first, double spacing, int count) {
    Valid.positive("spacing", spacing);
    Valid.positive("count", count);
    return new CoatField(
        IntStream.range(0, count)
            .mapToObj(
                i ->
                    new Pass(
                        first.centreline() + i * spacing,
                        first.fanWidth(),
                        first.meanFilm(),
                        first.profile(),
                        first.stroke()))
            .toList());
  }

  /** Film in metres at a point. */
  public double filmAt(double x, double y) {
    double film = 0;
    for (Pass pass : passes) {
      film += pass.filmAt(x, y);
    }
    return film;
  }

  /** This coat with another on top. */
  public CoatField then(CoatField next) {
    return new CoatField(Stream.concat(passes.stream(), next.passes.stream()).toList());
  }

  /**
   * Mean, spread and extremes over a rectangle, on cell middles of an even grid.
   *
   * @param columns 1 to 1000; rows likewise
   */
  public Ripple over(double left, double lower, double right, double upper, int columns, int rows) {
    Valid.between("columns", columns, 1, 1000);
    Valid.between("rows", rows, 1, 1000);
    if (!(right > left && upper > lower)) {
      throw new MeasureException("right", right, "beyond left, and upper above lower");
    }
    double[] film = new double[columns * rows];
    for (int i = 0; i < film.length; i++) {
      double x = left + (i % columns + 0.5) / columns * (right - left);
      double y = lower + (i / columns + 0.5) / rows * (upper - lower);
      film[i] = filmAt(x, y);
    }
    return Ripple.ofEqualAreas(film);
  }
}
