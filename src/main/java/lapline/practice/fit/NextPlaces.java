package lapline.practice.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lapline.practice.PanelOutline.Point;

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

  private NextPlaces() {}

  static List<Point> between(Contender one, Contender other, PlacedFilm film) {
    List<Told> told = new ArrayList<>();
    for (int i = 0; i < COLUMNS * ROWS; i++) {
      double x = RIM + (film.width - 2 * RIM) * (i % COLUMNS) / (COLUMNS - 1);
      double y = RIM + (film.height - 2 * RIM) * (i / COLUMNS) / (ROWS - 1);
      told.add(new Told(x, y, difference(one, other, x, y, film.meanUncertainty())));
    }
    told.sort(Comparator.comparingDouble((Told t) -> -t.by));
    return apart(told, Math.hypot(film.width, film.height) / 6);
  }

  private record Told(double x, double y, double by) {}

  private static double difference(
      Contender one, Contender other, double x, double y, double reading) {
    double fits =
        Math.hypot(
            one.fit().uncertaintyOf(one.termsAt(x, y)),
            other.fit().uncertaintyOf(other.termsAt(x, y)));
    return Math.abs(one.filmAt(x, y) - other.filmAt(x, y)) / Math.hypot(reading, fits);
  }

  /** The best ones that do not lie side by side. */
  private static List<Point> apart(List<Told> bestFirst, double least) {
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
