package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where to begin the search: stripes look alike again after every step, so that steps and shifts
 * that were not written down are tried over a grid, roughly, before anything is fitted.
 */
final class FirstGuess {
  /** Known better than this share of a step, a shift is not searched for. */
  private static final double SHIFT_KNOWN = 1 / 6.0;

  private static final int PHASES_A_STEP = 4;
  private static final int MOST = 16;

  /**
   * A guess whose squares are this much more than the best one's ends at no likely fit: roughly
   * twice the ln of a weight of 1 in 150, since a fit moves the passes as well.
   */
  private static final double HOPELESS = 10;

  /** Unevenness of any hand, as a share of the film. */
  private static final double HAND = 0.03;

  private final StrokeModel model;
  private final List<FilmAt> readings;
  private final double[][][] filmOfCoat;
  private final List<Guess> guesses = new ArrayList<>();

  private FirstGuess(StrokeModel model, List<FilmAt> readings) {
    this.model = model;
    this.readings = readings;
    this.filmOfCoat = new double[model.plan().coats().size()][][];
  }

  private record Guess(double[] parameters, double badness) {}

  /**
   * Those with any hope, best first, at most {@link #MOST}; one where nothing needs searching.
   *
   * @param start all parameters but the shifts, which are searched for
   */
  static List<double[]> of(StrokeModel model, List<FilmAt> readings, double[] start) {
    List<Guess> guesses = searched(model, readings, start);
    double worst = guesses.get(0).badness + HOPELESS;
    return guesses.stream()
        .limit(MOST)
        .filter(g -> g.badness <= worst)
        .map(Guess::parameters)
        .toList();
  }

  /** Squares that the best guess leaves, with the level fitted. */
  static double badness(PassPlan plan, List<FilmAt> readings) {
    StrokeModel bare = new StrokeModel(plan, List.of());
    return searched(bare, readings, new double[bare.parameters()]).get(0).badness;
  }

  private static List<Guess> searched(StrokeModel model, List<FilmAt> readings, double[] start) {
    FirstGuess search = new FirstGuess(model, readings);
    for (int coat = 0; coat < search.filmOfCoat.length; coat++) {
      search.filmOfCoat[coat] = search.film(coat, start);
    }
    search.shifts(start.clone(), new double[readings.size()], 0);
    return search.guesses.stream().sorted(Comparator.comparingDouble(Guess::badness)).toList();
  }

  private double[] phases(int coat) {
    return phases(model.plan(), coat);
  }

  /** As far to both sides as a uniform distribution of the shift's uncertainty. */
  private static double[] phases(PassPlan plan, int coat) {
    double shift = plan.coats().get(coat).shift() / plan.meanStep();
    if (shift < SHIFT_KNOWN) {
      return new double[] {0};
    }
    int count = (int) Math.round(PHASES_A_STEP * Math.sqrt(12) * shift);
    return IntStream.range(0, count)
        .mapToDouble(i -> (i - (count - 1) / 2.0) / PHASES_A_STEP)
        .toArray();
  }

  /** Where the first pass may lie, in steps from where it was meant. */
  static double[] phases(PassPlan plan) {
    return phases(plan, 0);
  }

  /** Of one coat alone, by phase and reading. */
  private double[][] film(int coat, double[] start) {
    StrokeModel alone = new StrokeModel(model.plan().only(coat), model.departures());
    double[] phases = phases(coat);
    double[][] film = new double[phases.length][readings.size()];
    double[] p = Arrays.copyOf(start, alone.parameters());
    System.arraycopy(start, model.first(), p, alone.first(), model.departures().size());
    p[StrokeModel.LEVEL] = 0;
    for (int i = 0; i < phases.length; i++) {
      p[StrokeModel.SHIFT] = phases[i] * model.plan().meanStep();
      StrokeModel.At at = alone.at(p);
      for (int r = 0; r < readings.size(); r++) {
        film[i][r] = at.film(readings.get(r).x(), readings.get(r).y());
      }
    }
    return film;
  }

  private void shifts(double[] p, double[] sum, int coat) {
    if (coat == filmOfCoat.length) {
      guesses.add(new Guess(p.clone(), badness(sum)));
      return;
    }
    double[] phases = phases(coat);
    for (int i = 0; i < phases.length; i++) {
      p[StrokeModel.SHIFT + coat] = phases[i] * model.plan().meanStep();
      double[] more = sum.clone();
      for (int r = 0; r < more.length; r++) {
        more[r] += filmOfCoat[coat][i][r];
      }
      shifts(p, more, coat + 1);
    }
    p[StrokeModel.SHIFT + coat] = 0;
  }

  /** Squares that are left with the level fitted. */
  private double badness(double[] film) {
    double own = 0;
    double cross = 0;
    double read = 0;
    double level = meanOf(film);
    for (int i = 0; i < film.length; i++) {
      FilmAt r = readings.get(i);
      double hand = HAND * level * film[i];
      double weight = 1 / (r.uncertainty() * r.uncertainty() + hand * hand);
      own += weight * film[i] * film[i];
      cross += weight * film[i] * r.film();
      read += weight * r.film() * r.film();
    }
    return own > 0 ? read - cross * cross / own : read;
  }

  /** Roughly, by how much film of a level of 1 falls short of the readings. */
  private double meanOf(double[] film) {
    double sum = 0;
    double read = 0;
    for (int i = 0; i < film.length; i++) {
      sum += film[i];
      read += readings.get(i).film();
    }
    return sum > 0 ? read / sum : 0;
  }
}
