package lapline.practice.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lapline.practice.PanelOutline.Point;
import lapline.practice.fit.CauseContest.Contender;

/**
 * Where three more readings would tell two causes apart: the points at which their fitted films
 * differ most, in units of the uncertainty of that difference and of the reading to come.
 */
final class NextPlaces {
  private static final int COUNT = 3;
  private static final int COLUMNS = 17;
  private static final int ROWS = 13;

  /** A gauge does not sit flat nearer to the edge than this, metres. */
  private static final double RIM = 0.015;

  private final PlacedFilm film;
  private final List<Shape> shared;

  /**
   * @param shared patterns that both causes have in
   */
  NextPlaces(PlacedFilm film, List<Shape> shared) {
    this.film = film;
    this.shared = shared;
  }

  List<Point> between(Contender one, Contender other) {
    List<Told> told = new ArrayList<>();
    for (int i = 0; i < COLUMNS * ROWS; i++) {
      double x = RIM + (film.width - 2 * RIM) * (i % COLUMNS) / (COLUMNS - 1);
      double y = RIM + (film.height - 2 * RIM) * (i / COLUMNS) / (ROWS - 1);
      told.add(told(one, other, x, y));
    }
    told.sort(Comparator.comparingDouble((Told t) -> -t.by));
    return apart(told);
  }

  private record Told(double x, double y, double by) {}

  private Told told(Contender one, Contender other, double x, double y) {
    double[] a = terms(one, x, y);
    double[] b = terms(other, x, y);
    double noise =
        Math.hypot(
            film.meanUncertainty(),
            Math.hypot(one.fit().uncertaintyOf(a), other.fit().uncertaintyOf(b)));
    double difference = sum(one.fit().coefficients(), a) - sum(other.fit().coefficients(), b);
    return new Told(x, y, Math.abs(difference) / noise);
  }

  private double[] terms(Contender c, double x, double y) {
    List<Shape> all = new ArrayList<>();
    all.add((px, py) -> 1);
    all.addAll(shared);
    all.addAll(c.pattern().shapes());
    return all.stream().mapToDouble(s -> s.at(x, y)).toArray();
  }

  private static double sum(double[] coefficients, double[] terms) {
    double sum = 0;
    for (int i = 0; i < terms.length; i++) {
      sum += coefficients[i] * terms[i];
    }
    return sum;
  }

  /** The best ones that do not lie side by side. */
  private List<Point> apart(List<Told> bestFirst) {
    double least = Math.hypot(film.width, film.height) / 6;
    List<Point> chosen = new ArrayList<>();
    for (Told t : bestFirst) {
      if (chosen.size() < COUNT
          && chosen.stream().allMatch(p -> Math.hypot(p.x() - t.x, p.y() - t.y) >= least)) {
        chosen.add(new Point(t.x, t.y));
      }
    }
    return List.copyOf(chosen);
  }
}
