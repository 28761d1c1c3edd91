package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.PlanContest.Weighed;
import lapline.trade.stroke.StrokeReading.Found;
import lapline.trade.stroke.StrokeReading.Rival;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Faults of all steps together, which are no departure from the passes but lie in the passes
 * themselves: steps too wide for the fan, and steps as uneven as they were written down. They are
 * named where the film shows them; steps that were written down as too wide also where luck hid it.
 */
final class StepFaults {
  /** Steps that differ by less in the root mean square are a steady hand's, metres. */
  private static final double UNEVEN = 2 * PassPlan.Coat.STEADY;

  /**
   * Chosen by simulation: film 15 % up or down at random mostly lies far below, what a gun that is
   * heeled by 20° leaves unexplained far above.
   */
  private static final double LEAST_FIT = 1e-6;

  private final StrokeRecord record;
  private final PlanContest contest;
  private final StrayRival stray;
  private final Estimate overlap;
  private final double least;
  private final double wide;

  /**
   * @param overlap as it came out
   */
  StepFaults(StrokeRecord record, PlanContest contest, StrayRival stray, Estimate overlap) {
    this.record = record;
    this.contest = contest;
    this.stray = stray;
    this.overlap = overlap;
    this.least = StrokeReading.MATERIAL * contest.leader().mean();
    this.wide = tooWide(contest);
  }

  List<Found> found() {
    List<Found> found = new ArrayList<>();
    wide().ifPresent(found::add);
    uneven().ifPresent(found::add);
    return found;
  }

  /** Steps too wide that nobody wrote down and only one reading speaks for. */
  Optional<Suspicion> suspicion() {
    return areWide() && restOnOneReading()
        ? Optional.of(
            new Suspicion(
                Fault.STEPS_WIDE, wide, true, contest.leader().fit(), contest.first().fit()))
        : Optional.empty();
  }

  private boolean areWide() {
    StrokeFit fit = contest.leader().fit();
    return wide >= 1 - StrokeContest.CHANCE
        && (record.stepsWritten() || (evenStripes(fit) >= least && fits(fit)));
  }

  private boolean restOnOneReading() {
    return !record.stepsWritten() && stray.takesSteps(wide, this::tooWide);
  }

  private Optional<Found> wide() {
    if (!areWide() || restOnOneReading()) {
      return Optional.empty();
    }
    StrokeFit fit = contest.leader().fit();
    double stripes = evenStripes(fit);
    return Optional.of(
        new Found(
            Fault.STEPS_WIDE,
            Optional.empty(),
            overlap,
            Estimate.of(stripes, relativeLevel(fit) * stripes),
            wide,
            withoutStripes(),
            instead(),
            next()));
  }

  /** Of film that no passes come near, steps that nobody wrote down are not blamed. */
  private boolean fits(StrokeFit fit) {
    return StrokeReading.fits(fit, contest.leader().strays().size()) >= LEAST_FIT;
  }

  private double tooWide(PlanContest of) {
    return of.weighed().stream().mapToDouble(w -> w.weight() * tooWide(w.fit())).sum();
  }

  /**
   * Probability that the steps are too wide; 0 where nobody wrote them down and this fit's film has
   * no stripes of them. Written ones may leave none, where one coat's passes lie between the
   * other's.
   */
  private double tooWide(StrokeFit fit) {
    if (!record.stepsWritten() && evenStripes(fit) < least) {
      return 0;
    }
    Estimate overlap = new FittedOverlap(fit).likeliest();
    return NormalDistribution.of(overlap.value(), overlap.standardUncertainty())
        .cumulativeProbability(record.leastOverlap());
  }

  private static double evenStripes(StrokeFit fit) {
    return FittedFilm.of(fit).steady().along(fit.model().plan().evened()).stripes();
  }

  private static double relativeLevel(StrokeFit fit) {
    return fit.uncertainty(StrokeModel.LEVEL);
  }

  /**
   * By the plan without stripes that fits best; by the even film of the same passes if none has.
   */
  private double withoutStripes() {
    return contest.weighed().stream()
        .filter(w -> evenStripes(w.fit()) < least)
        .max(Comparator.comparingDouble(Weighed::weight))
        .map(w -> contest.leader().scatterAlong(w.plan()))
        .orElseGet(() -> contest.leader().spread());
  }

  /** What it would have to be if the steps were as meant. */
  private List<Rival> instead() {
    Map<Fault, Double> share = new EnumMap<>(Fault.class);
    contest
        .first()
        .verdicts()
        .forEach((d, round) -> share.merge(round.claims().get(0).fault(), 1.0, Double::sum));
    return contest.leading() == 0
        ? List.of()
        : share.keySet().stream()
            .map(f -> new Rival(f, (1 - wide) / share.size()))
            .filter(r -> r.probability() >= StrokeReading.RIVAL)
            .sorted(Comparator.comparingDouble((Rival r) -> -r.probability()))
            .toList();
  }

  private List<NextSpot> next() {
    return instead().isEmpty()
        ? List.of()
        : NextSpots.between(
            contest.leader().fit(), contest.first().fit(), contest.leader().readingUncertainty());
  }

  private Optional<Found> uneven() {
    StrokeFit fit = contest.leader().fit();
    PassPlan plan = fit.model().plan();
    FittedFilm steady = FittedFilm.of(fit).steady();
    double stripes = steady.stripesBeside(steady.along(plan.evened()));
    if (plan.unevenness() < UNEVEN || stripes < least) {
      return Optional.empty();
    }
    StrokeContest leader = contest.leader();
    double even = leader.logWeight(plan.evened());
    double probability = 1 / (1 + Math.exp(even - leader.logWeight()));
    return probability < 1 - StrokeContest.CHANCE
        ? Optional.empty()
        : Optional.of(
            new Found(
                Fault.STEPS_UNEVEN,
                Optional.empty(),
                overlap,
                Estimate.of(stripes, relativeLevel(fit) * stripes),
                probability,
                leader.scatterAlong(plan.evened()),
                List.of(),
                List.of()));
  }
}
