package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Lets the faults of a hand compete for the readings of one panel, and single stray readings with
 * them, so that it takes more than one reading to make a fault.
 *
 * <p>One after the other comes in while 'nothing further' keeps less than {@link #CHANCE} of the
 * weight; then each is judged again with the others in. Linear departures are weighed without being
 * fitted, to first order about the fit; a heeled gun, which also moves every pass, is fitted.
 */
final class StrokeContest {
  /**
   * Chosen by simulation: of even panels 2 to 4 in 100 then show a fault, see
   * StrokeReadingProperties.
   */
  static final double CHANCE = 0.2;

  /**
   * Smaller effects, highest less lowest film at the places as a share of the mean, are no fault.
   */
  static final double MATERIAL = 0.08;

  /** How far off a stray reading is, as a share of the mean film. */
  private static final double STRAY_USUAL = 0.5;

  private static final double STRAY_SURE = 0.5;
  private static final int MOST_FAULTS = 3;

  /** A leaning fan's middle lies this share of its width to the heavy side, for a lean of 0.4. */
  private static final double LEAN = 0.4;

  private static final double LEAN_MOVES = 0.04;

  private final PassPlan plan;
  private final List<FilmAt> readings;
  private final double mean;
  private final double level;
  private final Forms forms;

  private final List<Departure> in = new ArrayList<>();
  private final List<Integer> strays = new ArrayList<>();
  private StrokeFit fit;

  StrokeContest(PassPlan plan, List<FilmAt> readings) {
    this.plan = plan;
    this.readings = readings;
    this.mean = readings.stream().mapToDouble(FilmAt::film).average().orElseThrow();
    this.level = Math.log(mean);
    this.forms = new Forms(plan);
    run();
  }

  private void run() {
    fit = fromScratch(in);
    int mostStrays = Math.max(1, readings.size() / 8);
    for (Round next = round(fit, in); ; next = round(fit, in)) {
      if (next.strayWeight() > STRAY_SURE && strays.size() < mostStrays) {
        strays.add(next.stray());
        fit = fitted(fit.model(), fit.parameters(), 1);
      } else if (in.size() < MOST_FAULTS && convinces(next)) {
        Departure one = next.claims().get(0).departure();
        fit = one instanceof Departure.Tilt ? leaning(fit, in) : wider(fit, one);
        in.add(one);
      } else {
        return;
      }
    }
  }

  private StrokeFit wider(StrokeFit before, Departure one) {
    StrokeModel wider = model(in, one);
    return fitted(wider, Arrays.copyOf(before.parameters(), wider.parameters()), 1);
  }

  private StrokeModel model(List<Departure> already, Departure one) {
    List<Departure> with = new ArrayList<>(already);
    with.add(one);
    return new StrokeModel(plan, with);
  }

  private static boolean convinces(Round round) {
    return round.leader().isPresent() && round.chance() <= CHANCE;
  }

  /** With all that came in. */
  StrokeFit fit() {
    return fit;
  }

  List<Integer> strays() {
    return List.copyOf(strays);
  }

  /**
   * For each fault that came in and holds with the others in: it against what could be in its
   * place.
   */
  Map<Departure, Round> verdicts() {
    Map<Departure, Round> verdicts = new LinkedHashMap<>();
    for (Departure one : in) {
      List<Departure> others = new ArrayList<>(in);
      others.remove(one);
      StrokeFit without = fromScratch(others);
      Round again = round(without, others);
      if (convinces(again) && !restsOnOneReading(without)) {
        verdicts.put(one, again);
      }
    }
    return verdicts;
  }

  /** Whether the evidence would be gone with the one reading that speaks most for it. */
  private boolean restsOnOneReading(StrokeFit without) {
    double all = 0;
    double most = 0;
    for (int i = 0; i < readings.size(); i++) {
      double before = without.residual()[i];
      double after = fit.residual()[i];
      double gain = (before * before - after * after) / 2;
      all += gain;
      most = Math.max(most, gain);
    }
    return all - most < Math.log(Fault.values().length / CHANCE);
  }

  /** With this departure in the place of another. */
  StrokeFit instead(Departure other, Departure of) {
    List<Departure> departures = new ArrayList<>(in);
    departures.remove(of);
    departures.add(other);
    return fromScratch(departures);
  }

  private StrokeFit fromScratch(List<Departure> departures) {
    StrokeModel model = new StrokeModel(plan, departures);
    StrokeModel bare = new StrokeModel(plan, List.of());
    return FirstGuess.of(bare, used(), level).stream()
        .map(p -> fitted(model, Arrays.copyOf(p, model.parameters()), 2))
        .max(Comparator.comparingDouble(StrokeFit::logEvidence))
        .orElseThrow();
  }

  /** The scatter goes by where the passes lie, and that by the fit. */
  private StrokeFit fitted(StrokeModel model, double[] start, int rounds) {
    List<FilmAt> used = used();
    StrokeFit result = null;
    double[] p = start;
    for (int round = 0; round < rounds; round++) {
      result = StrokeFit.of(model, used, HandScatter.about(model, p, used), p, level);
      p = result.parameters();
    }
    return result;
  }

  /** A stray counts next to nothing. */
  private List<FilmAt> used() {
    List<FilmAt> used = new ArrayList<>(readings);
    for (int i : strays) {
      FilmAt r = used.get(i);
      used.set(i, new FilmAt(r.x(), r.y(), r.film(), mean));
    }
    return used;
  }

  private Round round(StrokeFit without, List<Departure> inAlready) {
    Map<Fault, List<Claim>> all = claims(without, inAlready);
    Map<Fault, Claim> best = new EnumMap<>(Fault.class);
    all.forEach((fault, claims) -> best.put(fault, averaged(fault, claims)));
    int stray = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < readings.size(); i++) {
      double[] one = new double[readings.size()];
      one[i] = 1;
      double evidence =
          strays.contains(i)
              ? Double.NEGATIVE_INFINITY
              : without.gain(without.scatter().whitened(one), STRAY_USUAL * mean).inBulk();
      if (evidence > most) {
        most = evidence;
        stray = i;
      }
    }
    return new Round(best, stray, most);
  }

  /** The best form, with the mean of the evidence over all forms, tried or not. */
  private Claim averaged(Fault fault, List<Claim> claims) {
    Claim best = claims.stream().max(Comparator.comparingDouble(Claim::evidence)).orElseThrow();
    double sum = claims.stream().mapToDouble(c -> Math.exp(c.evidence() - best.evidence())).sum();
    return best.with(best.evidence() + Math.log(sum / forms.of(fault)));
  }

  private Map<Fault, List<Claim>> claims(StrokeFit without, List<Departure> inAlready) {
    List<Departure> rest = forms.beside(inAlready);
    double[][] columns = slopes(without, inAlready, rest);
    Map<Fault, List<Claim>> claims = new EnumMap<>(Fault.class);
    for (int i = 0; i < rest.size(); i++) {
      (rest.get(i) instanceof Departure.Tilt
              ? tilt(without, inAlready)
              : linear(without, rest.get(i), columns[i]))
          .ifPresent(c -> claims.computeIfAbsent(c.fault(), f -> new ArrayList<>()).add(c));
    }
    return claims;
  }

  private Optional<Claim> linear(StrokeFit without, Departure departure, double[] column) {
    StrokeFit.Gain gain = without.gain(without.scatter().whitened(column), departure.usual());
    double value = gain.value();
    boolean possible =
        value > departure.least()
            && value < 1.5 * departure.most()
            && Math.abs(value) * spread(column) >= MATERIAL * mean;
    return possible
        ? Optional.of(new Claim(forms.fault(departure, value), departure, value, gain.evidence()))
        : Optional.empty();
  }

  private static double spread(double[] column) {
    return Arrays.stream(column).max().orElse(0) - Arrays.stream(column).min().orElse(0);
  }

  /** Slopes of the film by each departure that is not in, at the places. */
  private double[][] slopes(StrokeFit without, List<Departure> inAlready, List<Departure> rest) {
    List<Departure> both = new ArrayList<>(inAlready);
    both.addAll(rest);
    StrokeModel wide = new StrokeModel(plan, both);
    StrokeModel.At at = wide.at(Arrays.copyOf(without.parameters(), wide.parameters()));
    int first = wide.first() + inAlready.size();
    double[][] columns = new double[rest.size()][readings.size()];
    for (int r = 0; r < readings.size(); r++) {
      at.film(readings.get(r).x(), readings.get(r).y());
      for (int i = 0; i < columns.length; i++) {
        columns[i][r] = at.slopes[first + i];
      }
    }
    return columns;
  }

  /**
   * A heeled gun moves the middle of each pass as well, so that the readings without it are fitted
   * by passes that lie elsewhere, and a small step from there does not find it.
   */
  private StrokeFit leaning(StrokeFit without, List<Departure> inAlready) {
    StrokeModel model = model(inAlready, new Departure.Tilt());
    return DoubleStream.of(-LEAN, LEAN)
        .mapToObj(lean -> fitted(model, leaning(without, model, lean), 1))
        .max(Comparator.comparingDouble(StrokeFit::logEvidence))
        .orElseThrow();
  }

  private Optional<Claim> tilt(StrokeFit without, List<Departure> inAlready) {
    StrokeFit leaning = leaning(without, inAlready);
    double[] p = leaning.parameters();
    int last = p.length - 1;
    if (difference(leaning.model(), p, last) < MATERIAL * mean) {
      return Optional.empty();
    }
    double evidence = leaning.logEvidence() - without.logEvidence();
    return Optional.of(new Claim(Fault.TILT, new Departure.Tilt(), p[last], evidence));
  }

  private double[] leaning(StrokeFit without, StrokeModel model, double lean) {
    double[] start = Arrays.copyOf(without.parameters(), model.parameters());
    start[StrokeModel.FAN] = 0;
    start[StrokeModel.SHAPE] = 0;
    for (int c = 0; c < plan.coats().size(); c++) {
      start[StrokeModel.SHIFT + c] -= Math.signum(lean) * LEAN_MOVES * plan.fanWidth().value();
    }
    start[model.parameters() - 1] = lean;
    return start;
  }

  /** Highest less lowest of what this parameter does to the film at the places. */
  private double difference(StrokeModel model, double[] parameters, int parameter) {
    double[] none = parameters.clone();
    none[parameter] = 0;
    StrokeModel.At with = model.at(parameters);
    StrokeModel.At without = model.at(none);
    return spread(
        readings.stream()
            .mapToDouble(r -> with.film(r.x(), r.y()) - without.film(r.x(), r.y()))
            .toArray());
  }
}
