package lapline.trade.measure;

import java.util.Optional;

/**
 * The probability that a true value lies in its target range, and the narrower range in which a
 * measured value may be accepted for it.
 *
 * <p>Source: JCGM 106:2012, clauses 7.2 to 7.4 (conformance probability), 7.6 (capability), 8.3
 * (guard bands), 9.3 (specific risks). The document takes the true value as normal about the best
 * value. Where the uncertainty rests on few readings this class takes Student's t with its degrees
 * of freedom instead (JCGM 101:2008, 6.4.9), so that three readings do not claim what thirty would.
 * Accuracy: 1e-9 absolute.
 */
public final class Conformance {
  private static final int HALVINGS = 200;

  private Conformance() {}

  /**
   * Probability that the true value conforms.
   *
   * @param estimate in SI; an uncertainty of 0 gives 0 or 1, a value on a limit conforms
   * @return 0 to 1
   */
  public static double probability(Estimate estimate, TargetRange range) {
    double u = estimate.standardUncertainty();
    if (u == 0) {
      return range.contains(estimate.value()) ? 1 : 0;
    }
    double low = (range.least() - estimate.value()) / u;
    double high = (range.most() - estimate.value()) / u;
    return ErrorShape.between(ErrorShape.of(estimate.degreesOfFreedom()), low, high);
  }

  /** The risk, in accepting this very panel, that its true value does not conform (9.3.2). */
  public static double consumersRisk(Estimate estimate, TargetRange range) {
    return 1 - probability(estimate, range);
  }

  /** The risk, in refusing this very panel, that its true value conforms (9.3.3). */
  public static double producersRisk(Estimate estimate, TargetRange range) {
    return probability(estimate, range);
  }

  /**
   * The guard band w for a single limit at which the conformance probability is {@code sure}.
   *
   * @param like an estimate as sure as those that are judged; its value is of no matter
   * @param sure 0 to 1, neither included; 0.95 gives w = 1.645 u where u is well known
   * @return in the unit of the uncertainty
   */
  public static double guardBand(Estimate like, double sure) {
    Valid.between("sure", sure, Double.MIN_VALUE, Math.nextDown(1.0));
    return ErrorShape.of(like.degreesOfFreedom()).inverseCumulativeProbability(sure)
        * like.standardUncertainty();
  }

  /**
   * The range narrowed by a guard band at each limit it has; widened where the band is negative
   * (guarded rejection).
   *
   * @return empty when the two bands meet, so that no value could be accepted
   */
  public static Optional<TargetRange> guarded(TargetRange range, double band) {
    double least = range.least() + Valid.finite("band", band);
    double most = range.most() - band;
    return least <= most ? Optional.of(new TargetRange(least, most)) : Optional.empty();
  }

  /**
   * All measured values whose conformance probability is {@code sure} or more. Differs from {@link
   * #guarded} with {@link #guardBand} where the range is only a few u wide and both limits bite.
   *
   * @param like an estimate as sure as those that are judged; its value is of no matter, and an
   *     uncertainty of 0 gives the range itself
   * @param sure 0.5 to 1, 1 not included
   * @return empty when not even the middle of the range is sure enough
   */
  public static Optional<TargetRange> acceptance(TargetRange range, Estimate like, double sure) {
    Valid.between("sure", sure, 0.5, Math.nextDown(1.0));
    boolean oneLimit = !range.hasLeast() || !range.hasMost();
    return oneLimit || like.standardUncertainty() == 0
        ? guarded(range, guardBand(like, sure))
        : guarded(range, like, sure);
  }

  /** By halving, for the probability falls from the middle of the range to either side. */
  private static Optional<TargetRange> guarded(TargetRange range, Estimate like, double sure) {
    double half = (range.most() - range.least()) / 2;
    if (atBand(range, like, half) < sure) {
      return Optional.empty();
    }
    double tooLittle = 0;
    double enough = half;
    for (int i = 0; i < HALVINGS && enough - tooLittle > 1e-12 * half; i++) {
      double band = (tooLittle + enough) / 2;
      if (atBand(range, like, band) < sure) {
        tooLittle = band;
      } else {
        enough = band;
      }
    }
    return guarded(range, enough);
  }

  private static double atBand(TargetRange range, Estimate like, double band) {
    double value = range.least() + band;
    return probability(
        new Estimate(value, like.standardUncertainty(), like.degreesOfFreedom()), range);
  }

  /**
   * Measurement capability index (7.6.3): the width of the range over four standard uncertainties;
   * 4 or more is commonly asked for.
   *
   * @param standardUncertainty more than 0
   * @throws MeasureException when the range has one limit only
   */
  public static double capability(TargetRange range, double standardUncertainty) {
    double width = Valid.finite("width of the range", range.most() - range.least());
    return width / (4 * Valid.positive("standardUncertainty", standardUncertainty));
  }

  /**
   * What is known of the true value from a reading and from what such work has been before (7.2.2):
   * the normal product, the more certain of the two weighing more.
   *
   * @param prior best value and spread of such work, spread more than 0
   * @param reading uncertainty more than 0
   */
  public static Estimate posterior(Estimate prior, Estimate reading) {
    double before = square(Valid.positive("prior u", prior.standardUncertainty()));
    double now = square(Valid.positive("reading u", reading.standardUncertainty()));
    // written as a step from the prior, so that squares of micrometres are only ever divided
    double weight = before / (before + now);
    double value = prior.value() + weight * (reading.value() - prior.value());
    return Estimate.of(value, reading.standardUncertainty() * Math.sqrt(weight));
  }

  private static double square(double x) {
    return x * x;
  }
}
