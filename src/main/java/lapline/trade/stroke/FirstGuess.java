package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where to begin the search: stripes look alike again after every step, so that steps and shifts
 * that were not written down are tried over a grid, roughly, before anything is fitted.
 */
final class FirstGuess {
  /** Known better than this share of a step, a shift is not searched for. */
  private static final double SHIFT_KNOWN = 1 / 6.0;

  private static final double[] PHASES = {-3 / 8.0, -1 / 8.0, 1 / 8.0, 3 / 8.0};
  private static final int KEPT = 3;

  /** Unevenness of any hand, as a share of the film. */
  private static final double HAND = 0.03;

  private final StrokeModel model;
  private final List<FilmAt> readings;
  private final List<Guess> guesses = new ArrayList<>();

  private FirstGuess(StrokeModel model, List<FilmAt> readings) {
    this.model = model;
    this.readings = readings;
  }

  private record Guess(double[] parameters, double badness) {}

  /**
   * The best few, best first; one where nothing needs searching.
   *
   * @param level ln of about the mean film
   */
  static List<double[]> of(StrokeModel model, List<FilmAt> readings, double level) {
    FirstGuess search = new FirstGuess(model, readings);
    double[] written = new double[model.parameters()];
    written[StrokeModel.LEVEL] = level;
    search.shifts(written, 0);
    return search.guesses.stream()
        .sorted(Comparator.comparingDouble(Guess::badness))
        .limit(KEPT)
        .map(Guess::parameters)
        .toList();
  }

  private void shifts(double[] p, int coat) {
    if (coat == model.plan().coats().size()) {
      guesses.add(new Guess(p.clone(), badness(p)));
      return;
    }
    double step = model.plan().meanStep();
    boolean known = model.plan().coats().get(coat).shift() < SHIFT_KNOWN * step;
    for (double phase : known ? new double[] {0} : PHASES) {
      p[StrokeModel.SHIFT + coat] = phase * step;
      shifts(p, coat + 1);
    }
    p[StrokeModel.SHIFT + coat] = 0;
  }

  /** Squares that are left with the level fitted. */
  private double badness(double[] p) {
    StrokeModel.At at = model.at(p);
    double own = 0;
    double cross = 0;
    double read = 0;
    for (FilmAt r : readings) {
      double film = at.film(r.x(), r.y());
      double weight = 1 / (r.uncertainty() * r.uncertainty() + HAND * HAND * film * film);
      own += weight * film * film;
      cross += weight * film * r.film();
      read += weight * r.film() * r.film();
    }
    return read - cross * cross / own;
  }
}
