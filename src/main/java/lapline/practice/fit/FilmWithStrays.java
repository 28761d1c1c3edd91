package lapline.practice.fit;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.StrokeReading;

/**
 * The film of a panel some of whose readings no stroke explains. They may be slips, or the film may
 * be rough: it is taken by all readings and by the others, each with the weight that they give it.
 * So a reading a little off still counts almost whole, and one that is far off counts for nothing,
 * without a jump between. How far off a slip lies is taken as of a Cauchy distribution, which has
 * no end: a nought too many is a slip as well.
 */
final class FilmWithStrays {
  private static final double LOG_STRAY =
      Math.log(StrokeReading.STRAYS / (1 - StrokeReading.STRAYS));

  /** Of its density over the normal one's, which is left out everywhere: √(2π) / π. */
  private static final double LOG_CAUCHY = 0.5 * Math.log(2 / Math.PI);

  private final PlacedFilm film;
  private final Set<Integer> strays;
  private final FilmFits all;
  private final FilmFits others;
  private final double logOdds;

  /**
   * @param strays places of it; others are left out
   */
  FilmWithStrays(PanelOutline panel, Map<Integer, Estimate> filmByPlace, Set<Integer> strays) {
    this.film = PlacedFilm.on(panel, filmByPlace);
    this.strays = Set.copyOf(strays);
    this.all = FilmFits.of(film);
    Map<Integer, Estimate> rest = new TreeMap<>(filmByPlace);
    rest.keySet().removeAll(strays);
    boolean none = rest.size() == filmByPlace.size();
    PlacedFilm without = none ? film : PlacedFilm.on(panel, rest);
    this.others = none ? all : FilmFits.of(without);
    this.logOdds = none ? Double.NEGATIVE_INFINITY : logOdds(strays, without.mean);
  }

  private double logOdds(Set<Integer> strays, double mean) {
    double odds = others.logEvidence() - all.logEvidence();
    for (int i = 0; i < film.size(); i++) {
      if (strays.contains(film.place[i])) {
        double scatter = Math.hypot(StrokeReading.STRAY_USUAL * mean, film.uncertainty[i]);
        double off = (film.film[i] - mean) / scatter;
        odds += LOG_STRAY + LOG_CAUCHY - Math.log(scatter) - Math.log1p(off * off);
      }
    }
    return odds;
  }

  /** Them, where they are likelier slips than film; none otherwise. */
  Set<Integer> setAside() {
    return logOdds > 0 ? strays : Set.of();
  }

  /** By all readings and by the others. */
  FilmFits fits() {
    return logOdds == Double.NEGATIVE_INFINITY ? all : all.or(others, logOdds);
  }

  Kriging likeliest() {
    return (logOdds > 0 ? others : all).likeliest();
  }

  PlacedFilm film() {
    return film;
  }
}
