package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Lets the ways in which the passes may lie compete as well: the faults are sought along the first
 * plan, then along the one that explains best what the first leaves, and the better of the two
 * leads.
 */
final class PlanContest {
  /** What other passes could show as well; the rest works along the strokes. */
  static final Set<Class<? extends Departure>> ACROSS =
      Set.of(
          Departure.Across.class,
          Departure.Tilt.class,
          Departure.Strip.class,
          Departure.Outermost.class);

  /** Readings that fit as well as this leave nothing for other passes to explain. */
  private static final double FITS_WELL = 0.05;

  /** Where a fault leaves less than one part in this of the film, nothing is to be seen of it. */
  private static final double MOST_TAKEN_OUT = 5;

  /** A plan of less weight changes nothing. */
  static final double HARDLY = 1e-4;

  /** So many of the other plans are fitted. */
  private static final int CLOSEST = 2;

  private final StrokeRecord record;
  private final List<FilmAt> readings;
  private final StrokeContest first;
  private final StrokeContest leader;
  private final int leading;
  private final List<Weighed> weighed = new ArrayList<>();
  private double logWeight;

  /**
   * One plan with its share of the weight, 0 to 1.
   *
   * @param fits the likely ones, the likeliest first; only that one of a plan of hardly any weight
   */
  record Weighed(PassPlan plan, List<StrokeFit> fits, double weight) {
    StrokeFit fit() {
      return fits.get(0);
    }
  }

  /** By all readings, or with those set aside from the start that lie far off all others. */
  static PlanContest of(StrokeRecord record, List<FilmAt> readings) {
    PlanContest all = new PlanContest(record, readings, List.of());
    List<Integer> far = FarOff.among(readings, StrokeContest.mostStrays(readings.size()));
    if (far.isEmpty()) {
      return all;
    }
    PlanContest others = new PlanContest(record, readings, far);
    return others.logWeight > all.logWeight ? others : all;
  }

  /**
   * @param strays readings that are set aside from the start
   */
  private PlanContest(StrokeRecord record, List<FilmAt> readings, List<Integer> strays) {
    this.record = record;
    this.readings = readings;
    this.first = new StrokeContest(record, record.plan(0), readings, strays);
    List<Integer> close = record.plans() == 1 ? List.of() : closest(readings);
    if (close.isEmpty() || leavesNothing(first)) {
      this.leader = first;
      this.leading = 0;
      weigh(close, 0, first);
      return;
    }
    int rival = close.stream().max(Comparator.comparingDouble(k -> log(first, k))).orElseThrow();
    StrokeContest second = new StrokeContest(record, record.plan(rival), readings, first.strays());
    boolean firstLeads = log(first, 0) >= log(second, rival);
    this.leader = firstLeads ? first : second;
    this.leading = firstLeads ? 0 : rival;
    weigh(close, rival, second);
  }

  private static boolean leavesNothing(StrokeContest contest) {
    double stripes = FittedFilm.of(contest.fit()).steady().stripes();
    return stripes < StrokeReading.MATERIAL * contest.mean()
        && StrokeReading.fits(contest.fit(), contest.strays().size()) >= FITS_WELL
        && contest.departures().stream().noneMatch(d -> ACROSS.contains(d.getClass()));
  }

  /** ln of the weight of what a contest found, with the passes as in the plan of this number. */
  private double log(StrokeContest contest, int plan) {
    return contest.logWeight(record.plan(plan)) + record.logPrior(plan);
  }

  /**
   * The other plans that come nearest to what the first contest leaves of the readings when the
   * faults along the strokes are taken out; roughly, and so not only one.
   */
  private List<Integer> closest(List<FilmAt> readings) {
    FittedFilm film = FittedFilm.of(first.fit()).without(ACROSS);
    FittedFilm steady = film.steady();
    List<FilmAt> level = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      FilmAt r = readings.get(i);
      double factor = steady.at(r.x(), r.y()) / film.at(r.x(), r.y());
      if (!first.strays().contains(i) && factor < MOST_TAKEN_OUT) {
        level.add(new FilmAt(r.x(), r.y(), factor * r.film(), r.uncertainty()));
      }
    }
    return IntStream.range(1, record.plans())
        .boxed()
        .sorted(Comparator.comparingDouble(k -> FirstGuess.badness(record.plan(k), level)))
        .limit(CLOSEST)
        .toList();
  }

  /** Those that are not close have no weight worth counting. */
  private void weigh(List<Integer> close, int rival, StrokeContest second) {
    List<Integer> plans = new ArrayList<>(List.of(0));
    plans.addAll(close);
    double[] logs = new double[plans.size()];
    for (int i = 0; i < logs.length; i++) {
      int k = plans.get(i);
      logs[i] = log(k == 0 ? first : k == rival ? second : leader, k);
    }
    double most = Arrays.stream(logs).max().orElseThrow();
    double whole = Arrays.stream(logs).map(l -> Math.exp(l - most)).sum();
    logWeight = most + Math.log(whole);
    for (int i = 0; i < logs.length; i++) {
      int k = plans.get(i);
      StrokeContest own = k == 0 ? first : k == rival ? second : leader;
      PassPlan plan = record.plan(k);
      double weight = Math.exp(logs[i] - most) / whole;
      List<StrokeFit> fits = weight > HARDLY ? own.modes(plan) : List.of(own.searched(plan));
      weighed.add(new Weighed(plan, fits, weight));
    }
  }

  /** The same with one more reading set aside than the leader has set aside. */
  PlanContest without(int reading) {
    List<Integer> strays = new ArrayList<>(leader.strays());
    strays.add(reading);
    return new PlanContest(record, readings, strays);
  }

  /** ln of the weight of all that may have happened. */
  double logWeight() {
    return logWeight;
  }

  /** The same of what the first plan makes of it. */
  double logWeightOfFirst() {
    return log(first, 0);
  }

  /** With the faults along the plan that leads. */
  StrokeContest leader() {
    return leader;
  }

  /** Along the first plan. */
  StrokeContest first() {
    return first;
  }

  /** Number of the plan that leads. */
  int leading() {
    return leading;
  }

  /** The first plan and those that come near. */
  List<Weighed> weighed() {
    return List.copyOf(weighed);
  }
}
