package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * What the film of a panel says about the stroke: the faults it speaks for, how sure that is, what
 * else could be in each one's place, and the film and overlap with their uncertainty.
 *
 * <p>Deterministic. Accuracy and limits: StrokeReadingProperties sprays panels with equations of
 * its own and says how often the fault that was made is named first.
 *
 * @param overlap 1 − step / fan width, of the passes over the panel, less a step that went wrong
 *     where nobody wrote the steps down; its uncertainty is that of what was written down where
 *     strokes overlap so much that the film cannot show it
 * @param meanFilm of the panel, metres
 * @param faults those that hold with the others in, most film moved first
 * @param strays the readings, by their number from 0, that no hand explains
 * @param fits probability of residuals at least as large as these if this is what happened; below
 *     {@link #FITS_NOTHING} the readings fit no pattern that is known here
 * @param scatter how far the readings lie off that film, root mean square, strays left out; metres
 * @param film of the whole panel as all this has it
 * @param suspected where no fault is sure, the one that is likely all the same
 */
public record StrokeReading(
    Estimate overlap,
    Estimate meanFilm,
    List<Found> faults,
    List<Integer> strays,
    double fits,
    double scatter,
    FittedFilm film,
    Optional<Suspected> suspected) {

  /** With fewer places than this nothing is read. */
  public static final int LEAST_PLACES = 8;

  public static final double FITS_NOTHING = 0.01;

  /**
   * Smaller effects, highest less lowest film at the places as a share of the mean, are no fault.
   */
  public static final double MATERIAL = 0.08;

  /**
   * How often a reading strays where nothing is known of it; course assumption: a slip of the pen,
   * a grain of dust under the probe.
   */
  public static final double STRAYS = 0.02;

  /** How far off a stray reading is, as a share of the mean film: one standard deviation. */
  public static final double STRAY_USUAL = 0.5;

  /** Named beside a fault when they have at least this share of the weight. */
  static final double RIVAL = 0.1;

  public StrokeReading {
    faults = List.copyOf(faults);
    strays = List.copyOf(strays);
  }

  /**
   * One fault.
   *
   * @param departure from the passes as they were meant; empty for a fault of the passes themselves
   * @param value of the departure, in its unit, see {@link Departure}; else the overlap
   * @param film highest less lowest of what it does to the film over the panel, metres
   * @param probability against all else that could be in its place, chance included
   * @param without how far the readings would lie off the film without it, root mean square, metres
   * @param rivals what else could be, likeliest first
   * @param next where three more readings would tell it from the first rival; empty without one
   */
  public record Found(
      Fault fault,
      Optional<Departure> departure,
      Estimate value,
      Estimate film,
      double probability,
      double without,
      List<Rival> rivals,
      List<NextSpot> next) {}

  /**
   * A fault that is likely and not sure.
   *
   * @param probability against all else, chance included
   * @param oneReading whether only one reading speaks for it
   * @param without how far the readings lie off the film without it, root mean square, metres
   * @param with the same with it
   * @param next where three more readings would settle it
   */
  public record Suspected(
      Fault fault,
      double probability,
      boolean oneReading,
      double without,
      double with,
      List<NextSpot> next) {}

  /** Another fault in a fault's place. */
  public record Rival(Fault fault, double probability) {}

  /** The same with one plan and nothing else known. */
  public static StrokeReading of(PassPlan plan, List<FilmAt> readings) {
    return of(StrokeRecord.of(plan), readings);
  }

  /**
   * @throws MeasureException with fewer than {@link #LEAST_PLACES} readings, or film that is
   *     nowhere more than 0
   */
  public static StrokeReading of(StrokeRecord record, List<FilmAt> readings) {
    if (readings.size() < LEAST_PLACES) {
      throw new MeasureException("readings", readings.size(), LEAST_PLACES + " or more");
    }
    double mean = readings.stream().mapToDouble(FilmAt::film).average().orElseThrow();
    if (!(mean > 0)) {
      throw new MeasureException("mean film", mean, "more than 0");
    }
    PlanContest plans = PlanContest.of(record, readings);
    CameOut cameOut = new CameOut(plans.weighed());
    StrokeContest contest = plans.leader();
    StrayRival stray = new StrayRival(plans);
    StepFaults steps = new StepFaults(record, plans, stray, cameOut.overlap());
    List<Found> found = new ArrayList<>(steps.found());
    contest
        .verdicts()
        .forEach(
            (departure, round) -> {
              if (!stray.takes(departure, round)) {
                found.add(found(contest, departure, round));
              }
            });
    found.sort(Comparator.comparingDouble((Found f) -> -f.film().value()));
    StrokeFit fit = contest.fit();
    return new StrokeReading(
        cameOut.overlap(),
        cameOut.meanFilm(),
        found,
        contest.strays(),
        fits(fit, contest.strays().size()),
        contest.scatter(),
        FittedFilm.of(fit),
        found.isEmpty()
            ? steps.suspicion().or(contest::suspicion).map(s -> suspected(contest, s))
            : Optional.empty());
  }

  private static Suspected suspected(StrokeContest contest, Suspicion s) {
    return new Suspected(
        s.fault(),
        s.probability(),
        s.oneReading(),
        contest.scatter(s.without()),
        contest.scatter(s.with()),
        NextSpots.between(s.with(), s.without(), contest.readingUncertainty()));
  }

  private static Found found(StrokeContest contest, Departure departure, Round round) {
    StrokeFit fit = contest.fit();
    int parameter = fit.model().first() + fit.model().departures().indexOf(departure);
    Claim leader = round.claims().get(0);
    List<Rival> rivals =
        round.claims().stream()
            .skip(1)
            .map(c -> new Rival(c.fault(), round.weight(c)))
            .filter(r -> r.probability() >= RIVAL)
            .toList();
    double value = fit.settled().parameters()[parameter];
    double uncertainty = fit.settled().uncertainty(parameter);
    FittedFilm film = FittedFilm.of(fit);
    double moved = film.apartFrom(film.without(departure));
    return new Found(
        leader.fault(),
        Optional.of(departure),
        Estimate.of(value, uncertainty),
        Estimate.of(moved, value == 0 ? 0 : moved * uncertainty / Math.abs(value)),
        round.weight(leader),
        contest.scatterWithout(departure),
        rivals,
        rivals.isEmpty()
            ? List.of()
            : NextSpots.between(
                fit,
                contest.instead(round.claims().get(1).departure(), departure),
                contest.readingUncertainty()));
  }

  static double fits(StrokeFit fit, int strays) {
    int n = fit.residual().length - strays;
    double free = Math.max(1, n - fit.model().departures().size() - 1);
    return ChiSquaredDistribution.of(free).survivalProbability(StrokeFit.square(fit.residual()));
  }
}
