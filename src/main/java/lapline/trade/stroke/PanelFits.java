package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fits of one panel with this or that departure in, strays set aside. Not for several threads. */
final class PanelFits {
  /** A leaning fan's middle lies this share of its width to the heavy side, for a lean of 0.4. */
  private static final double LEAN_MOVES = 0.04;

  private static final double LEAN = 0.4;

  /** ln of the shape of a heeled fan over that of an upright one: its heavy side is blunter. */
  private static final double LEANING_SHAPE = -0.15;

  /** So many rough guesses are followed where only the likeliest fit counts. */
  private static final int FOLLOWED = 3;

  /** After so many guesses in a row that ended at nothing new the rest are left. */
  private static final int BARREN = 4;

  /** Two fits that differ by no more than this, in standard uncertainties, are the same one. */
  private static final double SAME = 0.5;

  /** A fit of less weight than this against the likeliest changes nothing. */
  private static final double HARDLY = Math.log(1e-3);

  private final PassPlan plan;
  private final List<FilmAt> readings;
  private final List<Integer> strays = new ArrayList<>();
  private final Map<Known, StrokeFit> known = new HashMap<>();
  private double mean;

  /** What a fit depends on, departures in their order; strays only grow in number. */
  private record Known(List<Departure> departures, int strays) {}

  PanelFits(PassPlan plan, List<FilmAt> readings) {
    this.plan = plan;
    this.readings = List.copyOf(readings);
    this.mean = mean(i -> true);
  }

  List<FilmAt> readings() {
    return readings;
  }

  /** Of the readings that count, metres; of all where those that count are no film at all. */
  double mean() {
    return mean;
  }

  private double mean(IntPredicate which) {
    return IntStream.range(0, readings.size())
        .filter(which)
        .mapToDouble(i -> readings.get(i).film())
        .average()
        .orElse(0);
  }

  List<Integer> strays() {
    return List.copyOf(strays);
  }

  /** From now on this reading counts next to nothing. */
  void setAside(int stray) {
    strays.add(stray);
    double counted = mean(i -> !strays.contains(i));
    mean = counted > 0 ? counted : mean(i -> true);
  }

  /** The likeliest of all that the search finds. */
  StrokeFit searched(List<Departure> departures) {
    return known.computeIfAbsent(
        new Known(List.copyOf(departures), strays.size()),
        k ->
            again(
                followed(departures, FOLLOWED)
                    .max(Comparator.comparingDouble(StrokeFit::logEvidence))
                    .orElseThrow()));
  }

  private Stream<StrokeFit> followed(List<Departure> departures, int guesses) {
    StrokeModel model = new StrokeModel(plan, departures);
    StrokeModel bare = new StrokeModel(plan, List.of());
    double[] start = new double[bare.parameters()];
    start[StrokeModel.LEVEL] = Math.log(mean());
    return FirstGuess.of(bare, used(), start).stream()
        .limit(guesses)
        .map(p -> fitted(model, Arrays.copyOf(p, model.parameters())));
  }

  /**
   * All that the search finds, each once, beside the likeliest: where nobody wrote down where the
   * first pass lay, coats that lie otherwise may leave nearly the same film.
   *
   * @param likeliest by these readings, of this plan; comes first
   */
  List<StrokeFit> modes(StrokeFit likeliest) {
    List<StrokeFit> modes = new ArrayList<>(List.of(likeliest));
    Iterator<StrokeFit> all =
        followed(likeliest.model().departures(), Integer.MAX_VALUE).iterator();
    for (int nothing = 0; nothing < BARREN && all.hasNext(); nothing++) {
      StrokeFit fit = all.next();
      if (fit.logEvidence() - likeliest.logEvidence() > HARDLY && isNew(fit, modes)) {
        modes.add(again(fit));
        nothing = -1;
      }
    }
    return modes;
  }

  private static boolean isNew(StrokeFit fit, List<StrokeFit> modes) {
    return modes.stream().noneMatch(m -> isSame(m, fit));
  }

  private static boolean isSame(StrokeFit one, StrokeFit other) {
    double[] p = one.parameters();
    double[] q = other.parameters();
    return IntStream.range(0, p.length)
        .allMatch(j -> Math.abs(p[j] - q[j]) <= SAME * one.uncertainty(j));
  }

  /** The same with the strays as they are now. */
  StrokeFit again(StrokeFit before) {
    return fitted(before.model(), before.parameters());
  }

  /** With one departure more. */
  StrokeFit with(StrokeFit before, Departure one) {
    StrokeModel wider = wider(before.model(), one);
    return one instanceof Departure.Tilt
        ? leaning(before, wider)
        : fitted(wider, Arrays.copyOf(before.parameters(), wider.parameters()));
  }

  private StrokeModel wider(StrokeModel model, Departure one) {
    List<Departure> departures = new ArrayList<>(model.departures());
    departures.add(one);
    return new StrokeModel(plan, departures);
  }

  /**
   * A heeled gun moves the middle of each pass as well, so that the readings without it are fitted
   * by passes that lie elsewhere, and a small step from there does not find it: its passes are
   * searched for anew.
   */
  private StrokeFit leaning(StrokeFit without, StrokeModel wider) {
    return DoubleStream.of(-LEAN, LEAN)
        .mapToObj(lean -> FirstGuess.of(wider, used(), leaning(without, wider, lean)).get(0))
        .map(start -> fitted(wider, start))
        .max(Comparator.comparingDouble(StrokeFit::logEvidence))
        .orElseThrow();
  }

  private double[] leaning(StrokeFit without, StrokeModel model, double lean) {
    double[] start = Arrays.copyOf(without.parameters(), model.parameters());
    start[StrokeModel.FAN] = 0;
    start[StrokeModel.SHAPE] = LEANING_SHAPE;
    for (int c = 0; c < plan.coats().size(); c++) {
      start[StrokeModel.SHIFT + c] -= lean / LEAN * LEAN_MOVES * plan.fanWidth().value();
    }
    start[model.parameters() - 1] = lean;
    return start;
  }

  /** Highest less lowest of what a fan that leans this much would do to the film at the places. */
  double seenOfLean(StrokeFit without, double lean) {
    StrokeModel model = wider(without.model(), new Departure.Tilt());
    return seenOfLast(model, leaning(without, model, lean));
  }

  /** Highest less lowest of what the last parameter does to the film at the places. */
  double seenOfLast(StrokeModel model, double[] parameters) {
    double[] none = parameters.clone();
    none[none.length - 1] = 0;
    StrokeModel.At with = model.at(parameters);
    StrokeModel.At without = model.at(none);
    return spread(
        readings.stream()
            .mapToDouble(r -> with.film(r.x(), r.y()) - without.film(r.x(), r.y()))
            .toArray());
  }

  /** Root mean square of what the readings lie off a fit's film, strays left out; metres. */
  double scatter(StrokeFit fit) {
    StrokeModel.At at = fit.model().at(fit.parameters());
    double squares = 0;
    for (int i = 0; i < readings.size(); i++) {
      FilmAt r = readings.get(i);
      double off = strays.contains(i) ? 0 : r.film() - at.film(r.x(), r.y());
      squares += off * off;
    }
    return Math.sqrt(squares / Math.max(1, readings.size() - strays.size()));
  }

  static double spread(double[] values) {
    return Arrays.stream(values).max().orElse(0) - Arrays.stream(values).min().orElse(0);
  }

  /** The scatter goes by where the passes lie, and so by the start. */
  private StrokeFit fitted(StrokeModel model, double[] start) {
    List<FilmAt> used = used();
    HandScatter scatter = HandScatter.about(model, start, used);
    return StrokeFit.of(model, used, scatter, start, Math.log(mean()));
  }

  private List<FilmAt> used() {
    List<FilmAt> used = new ArrayList<>(readings);
    for (int i : strays) {
      FilmAt r = used.get(i);
      // however far off it is, it is one of the readings that such a stray may have given
      double off = Math.abs(r.film() - mean());
      used.set(i, new FilmAt(r.x(), r.y(), r.film(), Math.max(mean(), off)));
    }
    return used;
  }
}
