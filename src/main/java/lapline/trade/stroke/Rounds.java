package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Weighs every fault that may come in beside a fit. Linear departures are weighed without being
 * fitted, to first order about the fit; a heeled gun, which also moves every pass, is fitted.
 */
final class Rounds {
  /**
   * A departure whose likeliest value lies further beyond its bounds than this is not what
   * happened.
   */
  private static final double BEYOND_BOUNDS = 1.5;

  /** Where a fan that leans as far as this cannot be seen, none is looked for. */
  private static final double MOST_LEAN = 0.8;

  /** So far off even, in ln, the leading fault is sure or out of the question. */
  private static final double SURE = 4;

  private static final int DRAWS = 300;

  private final StrokeRecord record;
  private final PassPlan plan;
  private final PanelFits fits;
  private final Forms forms;

  Rounds(StrokeRecord record, PassPlan plan, PanelFits fits, Forms forms) {
    this.record = record;
    this.plan = plan;
    this.fits = fits;
    this.forms = forms;
  }

  /** All that may have happened beside what is in this fit. */
  Round beside(StrokeFit without) {
    Map<Fault, List<Claim>> claims = claims(without);
    Map<Fault, Claim> best = new EnumMap<>(Fault.class);
    claims.forEach((fault, forms) -> best.put(fault, averaged(fault, forms)));
    best.values().stream()
        .max(Comparator.comparingDouble(Claim::evidence))
        .filter(c -> Math.abs(c.evidence() - Math.log(Fault.DEPARTURES)) <= SURE)
        .ifPresent(c -> best.put(c.fault(), weighed(c, best(claims.get(c.fault())), without)));
    int count = fits.readings().size();
    int stray = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (!fits.strays().contains(i)) {
        double[] one = new double[count];
        one[i] = 1;
        double[] white = without.scatter().whitened(one);
        double evidence = Gain.of(without, white, StrokeReading.STRAY_USUAL * fits.mean()).inBulk();
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
    Claim best = best(claims);
    double sum = claims.stream().mapToDouble(c -> Math.exp(c.evidence() - best.evidence())).sum();
    return best.with(best.evidence() + Math.log(sum / forms.of(fault)));
  }

  private static Claim best(List<Claim> claims) {
    return claims.stream().max(Comparator.comparingDouble(Claim::evidence)).orElseThrow();
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
            && Math.abs(value) * PanelFits.spread(column) >= StrokeReading.MATERIAL * fits.mean();
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
    return StrokeReading.fits(without, fits.strays().size()) > 0.5;
  }

  private Optional<Claim> tilt(StrokeFit without) {
    double least = StrokeReading.MATERIAL * fits.mean();
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

  /**
   * The leading fault, where it is in doubt: with and without it over all ways in which the passes
   * may lie, since passes that lie elsewhere may explain as much as the fault does, and the fault
   * may need passes that lie elsewhere. What works across the strokes is left as it is, but for a
   * lean: chosen by simulation, of drifts across that nobody's steps told 67 of 100 were named so
   * and 55 over all ways, and a steady hand had none either way.
   *
   * @param averaged over all forms of the fault
   * @param form the best one
   */
  private Claim weighed(Claim averaged, Claim form, StrokeFit without) {
    boolean across = PlanContest.ACROSS.contains(form.departure().getClass());
    boolean few = fits.readings().size() <= PanelDraws.MOST_READINGS;
    if (across && !(form.fault() == Fault.TILT && few)) {
      return averaged;
    }
    List<StrokeFit> with = fits.modes(fits.with(without, form.departure()));
    List<StrokeFit> none = fits.modes(without);
    double evidence =
        across ? drawn(with, none) : sum(with, f -> told(f, form.departure())) - sum(none, f -> 0);
    return averaged.with(averaged.evidence() + evidence - form.evidence());
  }

  /** A lean bends the film under the rim, which a blurred one hides: by fans with a sharp one. */
  private static double drawn(List<StrokeFit> with, List<StrokeFit> none) {
    double birge = with.get(0).settled().birge();
    return drawn(with, birge) - drawn(none, birge);
  }

  private static double drawn(List<StrokeFit> fits, double birge) {
    return PanelDraws.logEvidence(fits.stream().map(StrokeFit::settled).toList(), birge, DRAWS);
  }

  /** What else is known of the departure that came in last. */
  private double told(StrokeFit with, Departure last) {
    double[] p = with.parameters();
    return last instanceof Departure.Arc ? record.forArc(p[p.length - 1]) : 0;
  }

  /** ln of the evidence of all these together. */
  private static double sum(List<StrokeFit> fits, ToDoubleFunction<StrokeFit> told) {
    double[] logs =
        fits.stream().mapToDouble(f -> f.logEvidence() + told.applyAsDouble(f)).toArray();
    double most = Arrays.stream(logs).max().orElseThrow();
    return most + Math.log(Arrays.stream(logs).map(l -> Math.exp(l - most)).sum());
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
