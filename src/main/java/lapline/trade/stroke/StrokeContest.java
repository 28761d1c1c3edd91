package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
   * Chosen by simulation: of even panels at most 5 in 100 show a fault, see
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
  private static final int READINGS_A_STRAY = 8;
  private static final int MOST_FAULTS = 3;

  /**
   * A departure whose likeliest value lies further beyond its bounds than this is not what
   * happened.
   */
  private static final double BEYOND_BOUNDS = 1.5;

  /** Where a fan that leans as far as this cannot be seen, none is looked for. */
  private static final double MOST_LEAN = 0.8;

  private final StrokeRecord record;
  private final PassPlan plan;
  private final PanelFits fits;
  private final Forms forms;
  private final List<Departure> in = new ArrayList<>();
  private final Map<PassPlan, StrokeFit> along = new HashMap<>();
  private StrokeFit fit;

  /**
   * @param plan one of the record's
   * @param strays readings that are set aside from the start
   */
  StrokeContest(StrokeRecord record, PassPlan plan, List<FilmAt> readings, List<Integer> strays) {
    this.record = record;
    this.plan = plan;
    this.fits = new PanelFits(plan, readings);
    this.forms = new Forms(plan);
    strays.forEach(fits::setAside);
    run();
  }

  private void run() {
    fit = fits.searched(in);
    int mostStrays = Math.max(1, fits.readings().size() / READINGS_A_STRAY);
    for (Round next = round(fit); ; next = round(fit)) {
      if (next.strayWeight() > STRAY_SURE && fits.strays().size() < mostStrays) {
        fits.setAside(next.stray());
        fit = fits.again(fit);
      } else if (in.size() < MOST_FAULTS && convinces(next)) {
        Departure one = next.claims().get(0).departure();
        fit = fits.with(fit, one);
        in.add(one);
      } else {
        return;
      }
    }
  }

  private static boolean convinces(Round round) {
    return round.leader().isPresent() && round.chance() <= CHANCE;
  }

  /** With all that came in. */
  StrokeFit fit() {
    return fit;
  }

  List<Integer> strays() {
    return fits.strays();
  }

  List<Departure> departures() {
    return List.copyOf(in);
  }

  /** Mean of the readings, metres. */
  double mean() {
    return fits.mean();
  }

  /** Mean standard uncertainty of a reading, metres. */
  double readingUncertainty() {
    return fits.readings().stream().mapToDouble(FilmAt::uncertainty).average().orElseThrow();
  }

  /** ln of the weight of all that this contest takes to have happened. */
  double logWeight() {
    return logWeight(fit);
  }

  /** The same for the same departures and strays with the passes as in this plan. */
  double logWeight(PassPlan other) {
    return logWeight(searched(other));
  }

  /** The likeliest fit with the same departures and strays along another plan. */
  StrokeFit searched(PassPlan other) {
    return other == plan ? fit : along.computeIfAbsent(other, this::fitted);
  }

  private StrokeFit fitted(PassPlan other) {
    PanelFits there = new PanelFits(other, fits.readings());
    fits.strays().forEach(there::setAside);
    return there.searched(in);
  }

  private double logWeight(StrokeFit of) {
    double priors = strays().size() * Round.LOG_STRAY;
    for (Departure one : in) {
      double value = of.parameters()[of.model().first() + in.indexOf(one)];
      priors -= Math.log(Fault.DEPARTURES * forms.of(forms.fault(one, value)));
    }
    return of.logEvidence() + priors;
  }

  /**
   * For each fault that came in and holds with the others in: it against what could be in its
   * place.
   */
  Map<Departure, Round> verdicts() {
    Map<Departure, Round> verdicts = new LinkedHashMap<>();
    for (Departure one : in) {
      StrokeFit without = fits.searched(others(one));
      Round again = round(without);
      if (convinces(again) && !restsOnOneReading(without)) {
        verdicts.put(one, again);
      }
    }
    return verdicts;
  }

  /** How far the readings lie off their mean, root mean square, metres. */
  double spread() {
    return Math.sqrt(
        fits.readings().stream()
            .mapToDouble(r -> (r.film() - fits.mean()) * (r.film() - fits.mean()))
            .average()
            .orElseThrow());
  }

  /** How far the readings lie off the film, root mean square, metres. */
  double scatter() {
    return fits.scatter(fit);
  }

  /** The same without this departure. */
  double scatterWithout(Departure one) {
    return fits.scatter(fits.searched(others(one)));
  }

  /** The same with the passes as in another plan. */
  double scatterAlong(PassPlan other) {
    return fits.scatter(searched(other));
  }

  /** With this departure in the place of another. */
  StrokeFit instead(Departure other, Departure of) {
    return fits.with(fits.searched(others(of)), other);
  }

  private List<Departure> others(Departure one) {
    List<Departure> others = new ArrayList<>(in);
    others.remove(one);
    return others;
  }

  /** Whether the evidence would be gone with the one reading that speaks most for it. */
  private boolean restsOnOneReading(StrokeFit without) {
    double all = 0;
    double most = 0;
    for (int i = 0; i < fits.readings().size(); i++) {
      double before = without.residual()[i];
      double after = fit.residual()[i];
      double gain = (before * before - after * after) / 2;
      all += gain;
      most = Math.max(most, gain);
    }
    return all - most < Math.log(Fault.DEPARTURES / CHANCE);
  }

  private Round round(StrokeFit without) {
    Map<Fault, Claim> best = new EnumMap<>(Fault.class);
    claims(without).forEach((fault, claims) -> best.put(fault, averaged(fault, claims)));
    int count = fits.readings().size();
    int stray = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (!fits.strays().contains(i)) {
        double[] one = new double[count];
        one[i] = 1;
        double[] white = without.scatter().whitened(one);
        double evidence = Gain.of(without, white, STRAY_USUAL * fits.mean()).inBulk();
        if (evidence > most) {
          most = evidence;
          stray = i;
        }
      }
    }
    return new Round(best, stray, most);
  }

  /** The best form, with the mean of the evidence over all forms, possible here or not. */
  private Claim averaged(Fault fault, List<Claim> claims) {
    Claim best = claims.stream().max(Comparator.comparingDouble(Claim::evidence)).orElseThrow();
    double sum = claims.stream().mapToDouble(c -> Math.exp(c.evidence() - best.evidence())).sum();
    return best.with(best.evidence() + Math.log(sum / forms.of(fault)));
  }

  private Map<Fault, List<Claim>> claims(StrokeFit without) {
    List<Departure> rest = forms.beside(without.model().departures());
    double[][] columns = slopes(without, rest);
    Map<Fault, List<Claim>> claims = new EnumMap<>(Fault.class);
    for (int i = 0; i < rest.size(); i++) {
      (rest.get(i) instanceof Departure.Tilt
              ? tilt(without)
              : linear(without, rest.get(i), columns[i]))
          .ifPresent(c -> claims.computeIfAbsent(c.fault(), f -> new ArrayList<>()).add(c));
    }
    return claims;
  }

  private Optional<Claim> linear(StrokeFit without, Departure departure, double[] column) {
    Gain gain = Gain.of(without, without.scatter().whitened(column), departure.usual());
    double value = gain.value();
    double told =
        departure instanceof Departure.Arc ? record.forArc(possible(departure, value)) : 0;
    boolean possible =
        value > departure.least()
            && value < BEYOND_BOUNDS * departure.most()
            && Math.abs(value) * PanelFits.spread(column) >= MATERIAL * fits.mean();
    return possible
        ? Optional.of(
            new Claim(forms.fault(departure, value), departure, value, gain.evidence() + told))
        : Optional.empty();
  }

  private static double possible(Departure departure, double value) {
    return Math.max(departure.least(), Math.min(departure.most(), value));
  }

  /** Leaves less than chance does, so that nothing is gained by a slow search. */
  private boolean isWell(StrokeFit without) {
    return StrokeReading.fits(without, strays().size()) > 0.5;
  }

  private Optional<Claim> tilt(StrokeFit without) {
    double least = MATERIAL * fits.mean();
    if (isWell(without) || fits.seenOfLean(without, MOST_LEAN) < least) {
      return Optional.empty();
    }
    Departure tilt = new Departure.Tilt();
    StrokeFit with = fits.with(without, tilt);
    double[] p = with.parameters();
    double evidence = with.logEvidence() - without.logEvidence();
    return fits.seenOfLast(with.model(), p) < least
        ? Optional.empty()
        : Optional.of(new Claim(Fault.TILT, tilt, p[p.length - 1], evidence));
  }

  /** Slopes of the film by each departure that is not in, at the places. */
  private double[][] slopes(StrokeFit without, List<Departure> rest) {
    List<Departure> both = new ArrayList<>(without.model().departures());
    both.addAll(rest);
    StrokeModel wide = new StrokeModel(plan, both);
    StrokeModel.At at = wide.at(Arrays.copyOf(without.parameters(), wide.parameters()));
    int first = without.model().parameters();
    double[][] columns = new double[rest.size()][fits.readings().size()];
    for (int r = 0; r < fits.readings().size(); r++) {
      at.film(fits.readings().get(r).x(), fits.readings().get(r).y());
      for (int i = 0; i < columns.length; i++) {
        columns[i][r] = at.slopes[first + i];
      }
    }
    return columns;
  }
}
