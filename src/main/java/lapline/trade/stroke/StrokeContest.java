package lapline.trade.stroke;

import java.util.ArrayList;
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
 * weight; then each is judged again with the others in.
 */
final class StrokeContest {
  /**
   * Chosen by simulation: of even panels at most 5 in 100 show a fault, see
   * StrokeReadingProperties.
   */
  static final double CHANCE = 0.2;

  /** The most for chance where the loudest reading is set aside. */
  private static final double WITHOUT_ONE = 0.3;

  /** What is not more likely than all else together is not even suspected. */
  private static final double SUSPECTED = 0.5;

  private static final double STRAY_SURE = 0.5;
  private static final int READINGS_A_STRAY = 6;
  private static final int MOST_FAULTS = 3;

  private final StrokeRecord record;
  private final PassPlan plan;
  private final PanelFits fits;
  private final Forms forms;
  private final Rounds rounds;
  private final List<Departure> in = new ArrayList<>();
  private final Map<PassPlan, PanelFits> along = new HashMap<>();
  private StrokeFit fit;
  private Round last;

  /**
   * @param plan one of the record's
   * @param strays readings that are set aside from the start
   */
  StrokeContest(StrokeRecord record, PassPlan plan, List<FilmAt> readings, List<Integer> strays) {
    this.record = record;
    this.plan = plan;
    this.fits = new PanelFits(plan, readings);
    this.forms = new Forms(plan);
    this.rounds = new Rounds(record, plan, fits, forms);
    strays.forEach(fits::setAside);
    run();
  }

  /** So many of these may be set aside. */
  static int mostStrays(int readings) {
    return Math.max(1, readings / READINGS_A_STRAY);
  }

  private void run() {
    fit = fits.searched(in);
    int mostStrays = mostStrays(fits.readings().size());
    for (Round next = rounds.beside(fit); ; next = rounds.beside(fit)) {
      if (next.strayWeight() > STRAY_SURE && fits.strays().size() < mostStrays) {
        fits.setAside(next.stray());
        fit = fits.again(fit);
      } else if (in.size() < MOST_FAULTS && convinces(next)) {
        Departure one = next.claims().get(0).departure();
        fit = fits.with(fit, one);
        in.add(one);
      } else {
        last = next;
        return;
      }
    }
  }

  /** Not while one more stray explains it better, though no more may be set aside. */
  private static boolean convinces(Round round) {
    return round.leader().isPresent()
        && round.chance() <= CHANCE
        && round.strayWeight() <= STRAY_SURE;
  }

  /** All that may have happened beside what came in. */
  Round last() {
    return last;
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
    return other == plan ? fit : along(other).searched(in);
  }

  /** All likely ones, the likeliest first; see {@link PanelFits#modes}. */
  List<StrokeFit> modes(PassPlan other) {
    return (other == plan ? fits : along(other)).modes(searched(other));
  }

  private PanelFits along(PassPlan other) {
    return along.computeIfAbsent(
        other,
        o -> {
          PanelFits there = new PanelFits(o, fits.readings());
          fits.strays().forEach(there::setAside);
          return there;
        });
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
      Round again = rounds.beside(without);
      if (convinces(again) && !restsOnOneReading(one, without)) {
        verdicts.put(one, again);
      }
    }
    return verdicts;
  }

  /**
   * What is likely and not sure where nothing is: a fault that came in and then rested on one
   * reading or was no longer convincing with the others in, else the one that led when none came in
   * any more. Empty where 'nothing further' is as likely.
   */
  Optional<Suspicion> suspicion() {
    return in.stream()
        .findFirst()
        .map(this::dropped)
        .or(this::leading)
        .filter(s -> s.probability() >= SUSPECTED);
  }

  private Suspicion dropped(Departure one) {
    StrokeFit without = fits.searched(others(one));
    Round again = rounds.beside(without);
    double probability = again.leader().map(again::weight).orElse(0.0);
    Fault fault = forms.fault(one, fit.parameters()[fit.model().first() + in.indexOf(one)]);
    boolean oneReading = convinces(again) || restsOnOneReading(one, without);
    return new Suspicion(fault, probability, oneReading, fit, without);
  }

  private Optional<Suspicion> leading() {
    return last.leader()
        .map(
            l ->
                new Suspicion(
                    l.fault(), last.weight(l), false, fits.with(fit, l.departure()), fit));
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
    return scatter(fit);
  }

  /** The same for another fit of these readings. */
  double scatter(StrokeFit other) {
    return fits.scatter(other);
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

  /**
   * Whether the evidence would be gone with the one reading that speaks most for it. Where the sum
   * of what each gains says so, the fault is judged anew without that reading.
   */
  private boolean restsOnOneReading(Departure one, StrokeFit without) {
    double all = 0;
    double most = 0;
    int loudest = 0;
    for (int i = 0; i < fits.readings().size(); i++) {
      double before = without.residual()[i];
      double after = fit.residual()[i];
      double gain = (before * before - after * after) / 2;
      all += gain;
      if (gain > most) {
        most = gain;
        loudest = i;
      }
    }
    return all - most < Math.log(Fault.DEPARTURES / CHANCE) && !holdsWithout(loudest, one);
  }

  /**
   * Whether a fault of the same kind still leads with this reading set aside, and chance is not
   * much more likely than it has to be.
   */
  private boolean holdsWithout(int reading, Departure one) {
    PanelFits rest = new PanelFits(plan, fits.readings());
    fits.strays().forEach(rest::setAside);
    rest.setAside(reading);
    Round round = new Rounds(record, plan, rest, forms).beside(rest.searched(others(one)));
    return round.chance() <= WITHOUT_ONE
        && round.leader().filter(l -> l.departure().getClass() == one.getClass()).isPresent();
  }
}
