package lapline.trade.spray;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.trade.measure.Valid;

/**
 * The film that a set of passes leaves over the panel: the sum of what each of them leaves. Flow
 * after spraying is left out.
 *
 * @param passes in the order they were sprayed, which does not matter; none leave no film
 */
public record CoatField(List<Pass> passes) {

  public CoatField {
    passes = List.copyOf(passes);
  }

  /**
   * Passes like the first one, evenly spaced upwards.
   *
   * @param spacing between centrelines, metres, more than 0
   * @param count 1 to 10,000
   * @throws lapline.trade.measure.MeasureException for other numbers
   */
  public static CoatField evenlySpaced(Pass first, double spacing, int count) {
    Valid.positive("spacing", spacing);
    Valid.between("count", count, 1, 10_000);
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

  /**
   * Film in metres at a point.
   *
   * @param x metres along the strokes, finite
   * @param y metres across them, finite
   */
  public double filmAt(double x, double y) {
    Valid.finite("x", x);
    Valid.finite("y", y);
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
   * Mean, spread and extremes over a rectangle, metres, on cell middles of an even grid.
   *
   * @param columns 1 to 10,000; rows likewise
   * @throws lapline.trade.measure.MeasureException for a rectangle without area or no cells
   */
  public Ripple over(double left, double lower, double right, double upper, int columns, int rows) {
    return on(new FilmGrid(left, lower, right, upper, columns, rows)).ripple();
  }

  /** The film at all places of a grid at once, metres. */
  public DepositField on(FilmGrid grid) {
    return DepositField.of(this, grid);
  }
}
