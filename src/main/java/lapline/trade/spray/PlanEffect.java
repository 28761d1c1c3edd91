package lapline.trade.spray;

import lapline.trade.spray.TransferLoss.Basis;

/**
 * What one change does to the film of a coat and to how even it lies.
 *
 * @param before dry film of one coat, metres; its evenness with it
 * @param after as likely, metres
 * @param leastAfter least mean film that may come of it, metres; the likely one where nothing is
 *     left open
 * @param mostAfter most mean film that may come of it, metres
 * @param overlapBefore share of the fan
 * @param overlapAfter share of the fan
 * @param basis what it rests on, to be shown with it
 */
public record PlanEffect(
    Ripple before,
    Ripple after,
    double leastAfter,
    double mostAfter,
    double overlapBefore,
    double overlapAfter,
    Basis basis) {

  /**
   * What comes of a change.
   *
   * @throws lapline.trade.measure.MeasureException where the changed plan has an overlap outside −1
   *     to 0.95
   */
  public static PlanEffect of(StrokePlan plan, PlanChange change) {
    StrokePlan changed = change.likely(plan);
    return new PlanEffect(
        plan.dryFilm(),
        changed.dryFilm(),
        change.thinnest(plan).dryFilm().mean(),
        change.thickest(plan).dryFilm().mean(),
        plan.overlap(),
        changed.overlap(),
        change.basis());
  }

  /** Mean film after over mean film before. */
  public double filmRatio() {
    return after.mean() / before.mean();
  }

  /** Spread over mean before less after: positive where the coat lies more even than it did. */
  public double evennessGained() {
    return before.variation() - after.variation();
  }
}
