package lapline.practice.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import lapline.practice.FilmField;
import lapline.practice.FilmField.PlaceFilm;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;

/**
 * Estimates the film between the reading places and the share of the panel that lies in its range.
 *
 * <p>The map is the kriging of the readings with the likeliest of a small set of covariances. The
 * share and its 95 % interval come from films drawn over all of them by their likelihood, so that
 * not knowing how smooth the film is makes the interval wider.
 *
 * <p>Valid for a film that varies over the panel in one manner, and for places spread over it: what
 * happens between places and nowhere shows in the readings, such as a single run, is not covered.
 * With fewer than 4 places the map is flat at their mean and the interval of the share is 0 to 1.
 * Only gauge errors that differ from reading to reading are covered, not an error of the gauge as a
 * whole. Accuracy of the share by the number of draws: 0.01.
 */
public final class FilmFieldEstimate {
  private static final int MOST_COLUMNS = 40;
  private static final int MOST_ROWS = 30;
  private static final int FEWEST_PLACES = 4;

  private final FilmField field;
  private final double[] sharesInside;

  private FilmFieldEstimate(FilmField field, double[] sharesInside) {
    this.field = field;
    this.sharesInside = sharesInside;
  }

  /** The same where no reading strays. */
  public static FilmFieldEstimate of(
      PanelOutline panel, Map<Integer, Estimate> filmByPlace, TargetRange target) {
    return of(panel, filmByPlace, Set.of(), target);
  }

  /**
   * @param filmByPlace film in metres with each reading's uncertainty; places that the panel does
   *     not have are left out
   * @param strays places whose reading no stroke explains: the film is taken with and without them,
   *     see {@link FilmWithStrays}
   * @throws MeasureException where no place is left
   */
  public static FilmFieldEstimate of(
      PanelOutline panel,
      Map<Integer, Estimate> filmByPlace,
      Set<Integer> strays,
      TargetRange target) {
    PlacedFilm film = PlacedFilm.on(panel, filmByPlace);
    if (film.size() == 0) {
      throw new MeasureException("places with film", 0, "1 or more");
    }
    return film.size() < FEWEST_PLACES
        ? flat(panel, film, target)
        : kriged(panel, new FilmWithStrays(panel, filmByPlace, strays), target);
  }

  public FilmField field() {
    return field;
  }

  /**
   * What share of the panel may lie in the range: shares from 0 to 1, each as likely as the next,
   * rising. The mean and the interval of {@link #field()} are those of this list.
   *
   * @return empty with fewer than 4 places, from which nothing can be said
   */
  public double[] sharesInside() {
    return sharesInside.clone();
  }

  private static FilmFieldEstimate kriged(
      PanelOutline panel, FilmWithStrays film, TargetRange target) {
    FilmDraws draws = new FilmDraws(film.fits(), PanelGrid.over(panel, 11, 8));
    double[] shares = draws.sharesInside(target);
    Summary summary =
        new Summary(
            draws.mean(),
            draws.spread(),
            Arrays.stream(shares).average().orElseThrow(),
            shares[(int) (0.025 * shares.length)],
            shares[(int) (0.975 * shares.length)]);
    return new FilmFieldEstimate(
        field(panel, film.film(), film.setAside(), target, film.likeliest()::filmAt, summary),
        shares);
  }

  private record Summary(double mean, double spread, double share, double low, double high) {}

  private static FilmFieldEstimate flat(PanelOutline panel, PlacedFilm film, TargetRange target) {
    double spread =
        Math.sqrt(
            Arrays.stream(film.film).map(f -> (f - film.mean) * (f - film.mean)).sum()
                / Math.max(1, film.size() - 1));
    Estimate anywhere = Estimate.of(film.mean, Math.hypot(spread, film.meanUncertainty()));
    double share = Conformance.probability(anywhere, target);
    Summary summary = new Summary(film.mean, spread, share, 0, 1);
    return new FilmFieldEstimate(
        field(panel, film, Set.of(), target, (x, y) -> film.mean, summary), new double[0]);
  }

  private static FilmField field(
      PanelOutline panel,
      PlacedFilm film,
      Set<Integer> setAside,
      TargetRange target,
      DoubleBinaryOperator filmAt,
      Summary summary) {
    PanelGrid grid = PanelGrid.over(panel, MOST_COLUMNS, MOST_ROWS);
    double[] map = new double[grid.x.length];
    Arrays.fill(map, Double.NaN);
    for (int i : grid.onPanel) {
      map[i] = filmAt.applyAsDouble(grid.x[i], grid.y[i]);
    }
    return new FilmField(
        panel.width(),
        panel.height(),
        grid.columns,
        grid.rows,
        Arrays.stream(map).boxed().toList(),
        target,
        summary.mean,
        summary.spread,
        summary.share,
        summary.low,
        summary.high,
        ThinAndThick.areas(grid, map, target),
        places(film),
        setAside.stream().sorted().toList());
  }

  private static List<PlaceFilm> places(PlacedFilm film) {
    return IntStream.range(0, film.size())
        .mapToObj(
            i ->
                new PlaceFilm(
                    film.place[i], film.x[i], film.y[i], film.film[i], film.uncertainty[i]))
        .toList();
  }
}
