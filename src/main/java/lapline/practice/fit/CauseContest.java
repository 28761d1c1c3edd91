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
import java.util.stream.Stream;
import lapline.practice.fit.FilmPattern.Meaning;
import lapline.trade.measure.Estimate;

/**
 * Lets the causes compete for the readings of one panel.
 *
 * <p>Each cause is the film's level plus its pattern, fitted by generalised least squares. Rivals
 * are compared by the Bayesian information criterion (Schwarz, Annals of Statistics 6, 1978), k ln
 * n − 2 ln L, with the scatter scaled up where no pattern explains it (Birge ratio) and never down.
 * BIC and not AICc: the question is which cause is true, not which model predicts best, and it
 * finds fewer causes on a good panel. Weights are exp(−½ΔBIC), with one half of the prior on 'no
 * cause' and the other shared evenly by the causes that the panel could show.
 *
 * <p>Several causes are found one after the other; then each is judged again with the others in.
 */
final class CauseContest {
  /** No cause is named while 'nothing but chance' keeps more weight than this. */
  static final double CHANCE = 0.05;

  /** Smaller patterns, as a share of the mean film, are not worth a change of hand. */
  static final double MATERIAL = 0.10;

  /** What is smaller than this share of the largest pattern may be a flaw of its shape. */
  static final double BESIDE_THE_LARGEST = 1 / 3.0;

  private static final int MOST_CAUSES = 3;
  private static final Shape LEVEL = (x, y) -> 1;

  private final PlacedFilm film;
  private final DistanceEvidence distances;
  private final List<FilmPattern> patterns;
  private final Map<FilmPattern, double[][]> columns = new IdentityHashMap<>();
  private final Map<FilmPattern, double[][]> whitened = new IdentityHashMap<>();
  private final FilmRegression level;
  private final double possibleCauses;
  private final List<Ranking> verdicts;

  CauseContest(PlacedFilm film, Technique technique) {
    this.film = film;
    this.distances = new DistanceEvidence(technique, film.mean);
    this.patterns = FilmPatterns.on(film.width, film.height, technique);
    this.possibleCauses = possible(patterns).size();
    List<double[]> all = new ArrayList<>(List.of(film.film, LEVEL.at(film.x, film.y)));
    for (FilmPattern p : patterns) {
      double[][] at = p.shapes().stream().map(s -> s.at(film.x, film.y)).toArray(double[][]::new);
      columns.put(p, at);
      all.addAll(List.of(at));
    }
    double[][] white =
        new SteadyHand(film, technique.fanWidth()).whitened(all.toArray(double[][]::new));
    this.level = FilmRegression.of(white[0]).with(white[1]);
    int next = 2;
    for (FilmPattern p : patterns) {
      whitened.put(p, Arrays.copyOfRange(white, next, next += p.shapes().size()));
    }
    this.verdicts = judged(found());
  }

  private static Set<Cause> possible(List<FilmPattern> patterns) {
    Set<Cause> possible = EnumSet.noneOf(Cause.class);
    for (FilmPattern p : patterns) {
      Stream.of(p.thicker(), p.thinner())
          .filter(m -> m != null)
          .forEach(m -> possible.add(m.cause()));
    }
    return possible;
  }

  /**
   * All contenders, best supported first.
   *
   * @param without the fit of what was already in
   * @param chance the weight of 'no further cause'
   */
  record Ranking(FilmRegression without, List<Contender> contenders, double chance) {
    Contender leader() {
      return contenders.isEmpty() ? null : contenders.get(0);
    }
  }

  /** The causes that the readings speak for, largest pattern first; each with its rivals. */
  List<Ranking> verdicts() {
    return verdicts;
  }

  /** Mean film over the panel's area, with all named patterns in. */
  Estimate meanFilm() {
    FilmRegression fit = level;
    List<Shape> shapes = new ArrayList<>(List.of(LEVEL));
    for (Ranking verdict : verdicts) {
      FilmPattern pattern = verdict.leader().pattern();
      fit = fit.with(whitened.get(pattern));
      shapes.addAll(pattern.shapes());
    }
    double[] means = shapes.stream().mapToDouble(s -> s.mean(film.width, film.height)).toArray();
    return Estimate.of(Contender.sum(fit.coefficients(), means), fit.uncertaintyOf(means));
  }

  private List<Ranking> found() {
    List<Ranking> found = new ArrayList<>();
    while (found.size() < MOST_CAUSES) {
      Ranking next = rank(found.stream().map(Ranking::leader).toList());
      if (!convinces(next)) {
        break;
      }
      found.add(next);
    }
    return found;
  }

  /** Each cause found once more, with the others already in. */
  private List<Ranking> judged(List<Ranking> found) {
    if (found.size() < 2) {
      return found;
    }
    List<Contender> standing = new ArrayList<>(found.stream().map(Ranking::leader).toList());
    List<Ranking> judged = new ArrayList<>();
    for (Ranking one : found) {
      standing.remove(one.leader());
      Ranking again = rank(standing);
      if (convinces(again)) {
        standing.add(again.leader());
        judged.add(again);
      }
    }
    judged.sort(Comparator.comparingDouble((Ranking r) -> -r.leader().size().metres()));
    double largest = judged.isEmpty() ? 0 : judged.get(0).leader().size().metres();
    double least = BESIDE_THE_LARGEST * largest;
    return judged.stream().filter(r -> r.leader().size().metres() >= least).toList();
  }

  private boolean convinces(Ranking ranking) {
    return ranking.leader() != null
        && ranking.chance() <= CHANCE
        && ranking.leader().size().metres() >= MATERIAL * film.mean;
  }

  /** Ranks the causes that are not in yet, given those that are. */
  private Ranking rank(List<Contender> in) {
    FilmRegression without = level;
    List<Shape> shapes = new ArrayList<>(List.of(LEVEL));
    Set<Cause> taken = EnumSet.noneOf(Cause.class);
    for (Contender c : in) {
      without = without.with(whitened.get(c.pattern()));
      shapes.addAll(c.pattern().shapes());
      taken.add(c.cause());
    }
    Map<Cause, Contender> best = new EnumMap<>(Cause.class);
    for (FilmPattern pattern : patterns) {
      Contender next = contender(without, shapes, pattern);
      if (next != null && !taken.contains(next.cause())) {
        best.merge(next.cause(), next, (a, b) -> b.badness() < a.badness() ? b : a);
      }
    }
    return weighed(without, best);
  }

  /** The pattern fitted; null where these places cannot show it or no cause would do that. */
  private Contender contender(FilmRegression without, List<Shape> in, FilmPattern pattern) {
    int count = pattern.shapes().size();
    FilmRegression fit =
        film.size() < without.columns() + count + 2 ? null : without.with(whitened.get(pattern));
    if (fit == null) {
      return null;
    }
    double[] amounts = Contender.amounts(fit, count);
    Meaning meaning = pattern.meaning(amounts);
    if (meaning == null || pattern.implied(amounts) > pattern.most() * film.mean) {
      return null;
    }
    double badness =
        badness(fit, pattern.searched()) + distances.against(meaning.cause(), amounts[0]);
    List<Shape> shapes = Stream.concat(in.stream(), pattern.shapes().stream()).toList();
    return new Contender(meaning, pattern, shapes, fit, columns.get(pattern), badness, 0);
  }

  /** BIC up to what all rivals share. */
  private double badness(FilmRegression fit, int searched) {
    int n = film.size();
    double scale = Math.max(1, fit.chiSquared() / n);
    return n * Math.log(scale)
        + fit.chiSquared() / scale
        + (fit.columns() + searched) * Math.log(n);
  }

  private Ranking weighed(FilmRegression without, Map<Cause, Contender> best) {
    // prior ½ for no cause against ½ shared by all causes
    double chance = badness(without, 0) + distances.againstChance() - 2 * Math.log(possibleCauses);
    double least =
        Math.min(
            chance, best.values().stream().mapToDouble(Contender::badness).min().orElse(chance));
    double whole =
        weight(chance, least)
            + best.values().stream().mapToDouble(c -> weight(c.badness(), least)).sum();
    List<Contender> ranked =
        best.values().stream()
            .map(c -> c.supported(weight(c.badness(), least) / whole))
            .sorted(Comparator.comparingDouble(Contender::badness))
            .toList();
    return new Ranking(without, ranked, weight(chance, least) / whole);
  }

  private static double weight(double badness, double least) {
    return Math.exp((least - badness) / 2);
  }
}
