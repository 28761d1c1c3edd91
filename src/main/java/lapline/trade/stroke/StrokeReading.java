package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
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
 * @param meanFilm of the panel, metres
 * @param overlap 1 − step / fan width; its uncertainty is that of what was written down where
 *     strokes overlap so much that the film cannot show it
 * @param faults those that hold with the others in, most film moved first
 * @param strays the readings, by their number from 0, that no hand explains
 * @param fits probability of residuals at least as large as these if this is what happened; below
 *     0.01 the readings fit no pattern that is known here
 */
public record StrokeReading(
    Estimate meanFilm, Estimate overlap, List<Found> faults, List<Integer> strays, double fits) {

  /** With fewer places than this nothing is read. */
  public static final int LEAST_PLACES = 8;

  /** Named beside a fault when they have at least this share of the weight. */
  private static final double RIVAL = 0.05;

  public StrokeReading {
    faults = List.copyOf(faults);
    strays = List.copyOf(strays);
  }

  /**
   * One fault.
   *
   * @param value of the departure, in its unit, see {@link Departure}
   * @param probability against all else that could be in its place, chance included
   * @param rivals what else could be, likeliest first
   * @param next where three more readings would tell it from the first rival; empty without one
   */
  public record Found(
      Fault fault,
      Departure departure,
      Estimate value,
      double probability,
      List<Rival> rivals,
      List<Spot> next) {}

  /** Another fault in a fault's place. */
  public record Rival(Fault fault, double probability) {}

  /**
   * @throws MeasureException with fewer than {@link #LEAST_PLACES} readings, or film that is
   *     nowhere more than 0
   */
  public static StrokeReading of(PassPlan plan, List<FilmAt> readings) {
    if (readings.size() < LEAST_PLACES) {
      throw new MeasureException("readings", readings.size(), LEAST_PLACES + " or more");
    }
    double mean = readings.stream().mapToDouble(FilmAt::film).average().orElseThrow();
    if (!(mean > 0)) {
      throw new MeasureException("mean film", mean, "more than 0");
    }
    StrokeContest contest = new StrokeContest(plan, readings);
    StrokeFit fit = contest.fit();
    List<Found> found = new ArrayList<>();
    double reading = readings.stream().mapToDouble(FilmAt::uncertainty).average().orElseThrow();
    contest
        .verdicts()
        .forEach((departure, round) -> found.add(found(contest, departure, round, reading)));
    return new StrokeReading(
        level(fit), overlap(fit), found, contest.strays(), fits(fit, contest.strays().size()));
  }

  private static Found found(
      StrokeContest contest, Departure departure, Round round, double reading) {
    StrokeFit fit = contest.fit();
    int parameter = fit.model().first() + fit.model().departures().indexOf(departure);
    Claim leader = round.claims().get(0);
    List<Rival> rivals =
        round.claims().stream()
            .skip(1)
            .map(c -> new Rival(c.fault(), round.weight(c)))
            .filter(r -> r.probability() >= RIVAL)
            .toList();
    return new Found(
        leader.fault(),
        departure,
        Estimate.of(fit.parameters()[parameter], fit.uncertainty(parameter)),
        round.weight(leader),
        rivals,
        rivals.isEmpty()
            ? List.of()
            : NextSpots.between(
                fit, contest.instead(round.claims().get(1).departure(), departure), reading));
  }

  private static Estimate level(StrokeFit fit) {
    double film = Math.exp(fit.parameters()[StrokeModel.LEVEL]);
    return Estimate.of(film, film * fit.uncertainty(StrokeModel.LEVEL));
  }

  private static Estimate overlap(StrokeFit fit) {
    double[] p = fit.parameters();
    PassPlan plan = fit.model().plan();
    double share =
        plan.meanStep()
            / plan.fanWidth().value()
            * Math.exp(p[StrokeModel.STEP] - p[StrokeModel.FAN]);
    double[] factors = new double[p.length];
    factors[StrokeModel.STEP] = 1;
    factors[StrokeModel.FAN] = -1;
    return Estimate.of(1 - share, share * fit.uncertaintyOf(factors));
  }

  private static double fits(StrokeFit fit, int strays) {
    int n = fit.residual().length - strays;
    double free = Math.max(1, n - fit.model().departures().size() - 1);
    return ChiSquaredDistribution.of(free).survivalProbability(StrokeFit.square(fit.residual()));
  }
}
