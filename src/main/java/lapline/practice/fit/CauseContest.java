package lapline.practice.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lapline.practice.fit.FilmPattern.Meaning;

/**
 * Lets the causes compete for the readings of one panel.
 *
 * <p>Each cause is the film's level plus its pattern, fitted by weighted least squares. Rivals are
 * compared by the Bayesian information criterion (Schwarz, Annals of Statistics 6, 1978), k ln n −
 * 2 ln L, with the readings' uncertainty scaled up where no pattern explains the scatter (Birge
 * ratio) and never down. BIC and not AICc: the question is which cause is true, not which model
 * predicts best, and it finds fewer causes on a good panel. Weights are exp(−½ΔBIC), with one half
 * of the prior on 'no cause' and the other shared evenly by the causes that the panel could show.
 *
 * <p>Several causes are found one after the other; then each is judged again with the others in.
 */
final class CauseContest {
  /** No cause is named while 'nothing but chance' keeps more weight than this. */
  static final double CHANCE = 0.05;

  /** Smaller patterns, as a share of the mean film, are not worth a change of hand. */
  static final double MATERIAL = 0.10;

  private static final int MOST_CAUSES = 3;

  private final PlacedFilm film;
  private final Technique technique;
  private final List<FilmPattern> patterns;
  private final Map<FilmPattern, double[][]> columns = new IdentityHashMap<>();
  private final double causes;

  CauseContest(PlacedFilm film, Technique technique) {
    this.film = film;
    this.technique = technique;
    this.patterns = FilmPatterns.on(film.width, film.height, technique);
    for (FilmPattern p : patterns) {
      columns.put(p, p.shapes().stream().map(s -> s.at(film.x, film.y)).toArray(double[][]::new));
    }
    Set<Cause> possible = EnumSet.noneOf(Cause.class);
    patterns.forEach(p -> add(possible, p));
    this.causes = possible.size();
  }

  private static void add(Set<Cause> possible, FilmPattern pattern) {
    if (pattern.thicker() != null) {
      possible.add(pattern.thicker().cause());
    }
    if (pattern.thinner() != null) {
      possible.add(pattern.thinner().cause());
    }
  }

  /** A cause in its best form, as fitted. */
  record Contender(
      Meaning meaning,
      FilmPattern pattern,
      FilmRegression fit,
      double[] coefficients,
      double badness,
      double support) {

    Cause cause() {
      return meaning.cause();
    }

    /** Thickest less thinnest, metres. */
    double size() {
      return FilmPattern.size(coefficients);
    }

    private Contender supported(double newSupport) {
      return new Contender(meaning, pattern, fit, coefficients, badness, newSupport);
    }
  }

  /** All contenders, best supported first; {@code chance} is the weight of 'no cause'. */
  record Ranking(
      FilmRegression without, List<Shape> shared, List<Contender> contenders, double chance) {
    Contender leader() {
      return contenders.isEmpty() ? null : contenders.get(0);
    }
  }

  /** The causes that the readings speak for, largest pattern first; each with its rivals. */
  List<Ranking> verdicts() {
    List<Contender> accepted = new ArrayList<>();
    while (accepted.size() < MOST_CAUSES) {
      Ranking ranking = rank(accepted);
      if (!convinces(ranking)) {
        break;
      }
      accepted.add(ranking.leader());
    }
    return accepted.size() < 2
        ? accepted.stream().map(a -> rank(List.of())).toList()
        : again(accepted);
  }

  /** Each accepted cause once more, with the others already in. */
  private List<Ranking> again(List<Contender> accepted) {
    List<Contender> standing = new ArrayList<>(accepted);
    List<Ranking> verdicts = new ArrayList<>();
    for (Contender one : accepted) {
      List<Contender> others = new ArrayList<>(standing);
      others.remove(one);
      Ranking ranking = rank(others);
      standing.remove(one);
      if (convinces(ranking)) {
        standing.add(ranking.leader());
        verdicts.add(ranking);
      }
    }
    verdicts.sort(Comparator.comparingDouble((Ranking r) -> -r.leader().size()));
    return verdicts;
  }

  private boolean convinces(Ranking ranking) {
    return ranking.leader() != null
        && ranking.chance() <= CHANCE
        && seen(ranking.leader()) >= MATERIAL * film.mean;
  }

  /** Thickest less thinnest of the pattern among the places: what was seen, not what it implies. */
  private double seen(Contender contender) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double[][] shapes = columns.get(contender.pattern());
    for (int i = 0; i < film.size(); i++) {
      double sum = 0;
      for (int j = 0; j < shapes.length; j++) {
        sum += contender.coefficients()[j] * shapes[j][i];
      }
      least = Math.min(least, sum);
      most = Math.max(most, sum);
    }
    return most - least;
  }

  /** Ranks the causes that are not in yet, given those that are. */
  private Ranking rank(List<Contender> in) {
    FilmRegression without = base(in);
    Map<Cause, Contender> best = new EnumMap<>(Cause.class);
    for (FilmPattern pattern : patterns) {
      Contender next = contender(without, pattern);
      if (next != null && in.stream().noneMatch(c -> c.cause() == next.cause())) {
        best.merge(next.cause(), next, (a, b) -> b.badness() < a.badness() ? b : a);
      }
    }
    List<Shape> shared = in.stream().flatMap(c -> c.pattern().shapes().stream()).toList();
    return weighed(without, shared, best);
  }

  private FilmRegression base(List<Contender> in) {
    double[] ones = new double[film.size()];
    Arrays.fill(ones, 1);
    FilmRegression base = FilmRegression.of(film.film, film.uncertainty).with(ones);
    for (Contender c : in) {
      FilmRegression more = with(base, c.pattern());
      base = more == null ? base : more;
    }
    return base;
  }

  private FilmRegression with(FilmRegression base, FilmPattern pattern) {
    FilmRegression fit = base;
    for (double[] column : columns.get(pattern)) {
      fit = fit == null ? null : fit.with(column);
    }
    return fit;
  }

  private Contender contender(FilmRegression without, FilmPattern pattern) {
    int count = pattern.shapes().size();
    if (film.size() < without.columns() + count + 2) {
      return null;
    }
    FilmRegression fit = with(without, pattern);
    if (fit == null) {
      return null;
    }
    double[] coefficients = fit.lastCoefficients(count);
    Meaning meaning = pattern.meaning(coefficients);
    if (meaning == null || FilmPattern.size(coefficients) > pattern.most() * film.mean) {
      return null;
    }
    double badness = badness(fit, pattern.searched()) + distances(meaning.cause(), coefficients);
    return new Contender(meaning, pattern, fit, coefficients, badness, 0);
  }

  /** BIC up to what all rivals share. */
  private double badness(FilmRegression fit, int searched) {
    int n = film.size();
    double scale = Math.max(1, fit.chiSquared() / n);
    return n * Math.log(scale)
        + fit.chiSquared() / scale
        + (fit.columns() + searched) * Math.log(n);
  }

  /** What the gun distances say: an arc moves the gun away at both ends. */
  private double distances(Cause cause, double[] coefficients) {
    if (!technique.bowKnown()) {
      return 0;
    }
    double expected = 0;
    if (cause == Cause.ARCING) {
      double left = Math.max(0.1, 1 - coefficients[0] / film.mean);
      expected = Math.pow(left, -1 / 3.0) - 1;
    }
    double off = (technique.bow() - expected) / technique.bowUncertainty();
    return off * off;
  }

  private Ranking weighed(FilmRegression without, List<Shape> shared, Map<Cause, Contender> best) {
    // ln ½ for no cause against ln ½/causes for each cause: −2 ln of the prior odds
    double chanceBadness = badness(without, 0) + distances(null, null) - 2 * Math.log(causes);
    double least =
        best.values().stream().mapToDouble(Contender::badness).min().orElse(chanceBadness);
    double shift = Math.min(least, chanceBadness);
    double chance = Math.exp((shift - chanceBadness) / 2);
    double sum = chance;
    for (Contender c : best.values()) {
      sum += Math.exp((shift - c.badness()) / 2);
    }
    double whole = sum;
    List<Contender> ranked =
        best.values().stream()
            .map(c -> c.supported(Math.exp((shift - c.badness()) / 2) / whole))
            .sorted(Comparator.comparingDouble(Contender::badness))
            .toList();
    return new Ranking(without, shared, ranked, chance / whole);
  }
}
