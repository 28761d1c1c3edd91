package lapline.practice.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
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

  /** Length scales tried, as shares of the panel's width and height. */
  private static final double[] LENGTHS = {0.15, 0.35, 0.8, 2.0};

  /** Spreads tried, as shares of that of the readings. */
  private static final double[] SPREADS = {0.5, 1.0, 2.0, 4.0};

  private final FilmField field;
  private final double[] sharesInside;

  private FilmFieldEstimate(FilmField field, double[] sharesInside) {
    this.field = field;
    this.sharesInside = sharesInside;
  }

  /**
   * @param filmByPlace film in metres with each reading's uncertainty; places that the panel does
   *     not have are left out
   * @throws MeasureException where no place is left
   */
  public static FilmFieldEstimate of(
      PanelOutline panel, Map<Integer, Estimate> filmByPlace, TargetRange target) {
    PlacedFilm film = PlacedFilm.on(panel, filmByPlace);
    if (film.size() == 0) {
      throw new MeasureException("places with film", 0, "1 or more");
    }
    return film.size() < FEWEST_PLACES ? flat(panel, film, target) : kriged(panel, film, target);
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

  private static FilmFieldEstimate kriged(PanelOutline panel, PlacedFilm film, TargetRange target) {
    Kriging[] fits = fits(film);
    double[] weights = weights(fits);
    Kriging likeliest = fits[likeliest(weights)];
    FilmDraws draws = new FilmDraws(fits, weights, PanelGrid.over(panel, 11, 8));
    double[] shares = draws.sharesInside(target);
    Summary summary =
        new Summary(
            draws.mean(),
            draws.spread(),
            Arrays.stream(shares).average().orElseThrow(),
            shares[(int) (0.025 * shares.length)],
            shares[(int) (0.975 * shares.length)]);
    return new FilmFieldEstimate(field(panel, film, target, likeliest::filmAt, summary), shares);
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
        field(panel, film, target, (x, y) -> film.mean, summary), new double[0]);
  }

  private static FilmField field(
      PanelOutline panel,
      PlacedFilm film,
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
        places(film));
  }

  private static List<PlaceFilm> places(PlacedFilm film) {
    return IntStream.range(0, film.size())
        .mapToObj(
            i ->
                new PlaceFilm(
                    film.place[i], film.x[i], film.y[i], film.film[i], film.uncertainty[i]))
        .toList();
  }

  private static Kriging[] fits(PlacedFilm film) {
    double spread = Math.max(film.scatter(), 0.5 * film.meanUncertainty());
    Kriging[] fits = new Kriging[LENGTHS.length * LENGTHS.length * SPREADS.length];
    int i = 0;
    for (double along : LENGTHS) {
      for (double across : LENGTHS) {
        for (double share : SPREADS) {
          fits[i++] =
              new Kriging(
                  film,
                  new FilmCovariance(along * film.width, across * film.height, share * spread));
        }
      }
    }
    return fits;
  }

  private static double[] weights(Kriging[] fits) {
    double best = Arrays.stream(fits).mapToDouble(Kriging::logLikelihood).max().orElseThrow();
    double[] weights =
        Arrays.stream(fits).mapToDouble(f -> Math.exp(f.logLikelihood() - best)).toArray();
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(w -> w / sum).toArray();
  }

  private static int likeliest(double[] weights) {
    int best = 0;
    for (int i = 1; i < weights.length; i++) {
      best = weights[i] > weights[best] ? i : best;
    }
    return best;
  }
}
