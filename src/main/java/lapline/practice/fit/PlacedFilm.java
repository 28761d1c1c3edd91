package lapline.practice.fit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.FilmAt;

/** Film at places of known position, as arrays ready for sums; all in metres. */
final class PlacedFilm {
  /** No gauge is surer than this about one reading. */
  private static final double LEAST_UNCERTAINTY = 0.2e-6;

  /** From one spot to the next a few millimetres away, metres; course assumption. */
  private static final double TEXTURE = 1e-6;

  final double width;
  final double height;
  final int[] place;
  final double[] x;
  final double[] y;
  final double[] film;
  final double[] uncertainty;
  final double mean;

  private PlacedFilm(PanelOutline panel, List<PanelOutline.Place> at, Map<Integer, Estimate> film) {
    this.width = panel.width();
    this.height = panel.height();
    this.place = at.stream().mapToInt(PanelOutline.Place::number).toArray();
    this.x = at.stream().mapToDouble(PanelOutline.Place::x).toArray();
    this.y = at.stream().mapToDouble(PanelOutline.Place::y).toArray();
    this.film = at.stream().mapToDouble(p -> film.get(p.number()).value()).toArray();
    this.uncertainty =
        at.stream()
            .mapToDouble(
                p -> Math.max(LEAST_UNCERTAINTY, film.get(p.number()).standardUncertainty()))
            .toArray();
    this.mean = IntStream.range(0, size()).mapToDouble(i -> this.film[i]).average().orElse(0);
  }

  /** The places of the panel that have a value; values at places it does not have are left out. */
  static PlacedFilm on(PanelOutline panel, Map<Integer, Estimate> film) {
    return new PlacedFilm(
        panel, panel.places().stream().filter(p -> film.containsKey(p.number())).toList(), film);
  }

  /** The numbers of the places that stand here, from 0, as the task names them. */
  Set<Integer> named(List<Integer> here) {
    return here.stream().map(i -> place[i]).collect(Collectors.toSet());
  }

  int size() {
    return place.length;
  }

  double meanUncertainty() {
    return IntStream.range(0, size()).mapToDouble(i -> uncertainty[i]).average().orElse(0);
  }

  /** Standard deviation from place to place; 0 for one place. */
  double scatter() {
    double sum = 0;
    for (double f : film) {
      sum += (f - mean) * (f - mean);
    }
    return size() < 2 ? 0 : Math.sqrt(sum / (size() - 1));
  }

  /**
   * Mean over the places; its uncertainty is that of the readings or of their scatter if larger,
   * which is known the better the more places there are.
   */
  Estimate level() {
    double read = 0;
    for (double u : uncertainty) {
      read += u * u;
    }
    double known = Math.sqrt(read) / size();
    double seen = scatter() / Math.sqrt(size());
    return seen > known ? new Estimate(mean, seen, size() - 1) : Estimate.of(mean, known);
  }

  /** As readings of the film on the panel, whose own texture adds to the gauge's uncertainty. */
  List<FilmAt> readings() {
    return IntStream.range(0, size())
        .mapToObj(i -> new FilmAt(x[i], y[i], film[i], Math.hypot(uncertainty[i], TEXTURE)))
        .toList();
  }
}
