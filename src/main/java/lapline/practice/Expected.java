package lapline.practice;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lapline.practice.Criterion.Judged;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/**
 * What a task lets one expect of a single reading, far wider than what it asks for: enough to doubt
 * a number or its unit, and nothing that a panel is scored by.
 *
 * @param asked what the task asks for; where it asks for nothing, what is usual in a workshop
 * @param near where a number in its right unit would lie
 * @param usual outside it another unit is looked for
 * @param believable outside it the number is doubted though no other unit explains it
 */
record Expected(TargetRange asked, TargetRange near, TargetRange usual, TargetRange believable) {
  /** Below a fifth of the least, or above five times the most, another unit is looked for. */
  private static final double FAR = 5;

  /** So far away a reading is asked about though no other unit explains it. */
  private static final double BEYOND = 10;

  /** With nothing but one limit, what is good can be far from it. */
  private static final double FAR_FROM_ONE_LIMIT = 50;

  private static final double NEAR = 2;
  private static final double NEAR_ONE_LIMIT = 20;

  /** Between these a workshop is sprayed in at all, in °C; common practice, no source. */
  private static final TargetRange WORKABLE = new TargetRange(5, 45);

  /** Kelvins that a warmth in its right unit, and one in any, may be off a target. */
  private static final double NEAR_WARMTH = 5;

  private static final double FAR_WARMTH = 10;

  private static final TargetRange ANY =
      new TargetRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  private static final String BEFORE = "film-before";
  private static final Set<String> WITH_WHAT_LIES_BELOW = Set.of(BEFORE, "film-after");

  /** Empty where neither the task nor the trade says anything about it. */
  static Optional<Expected> of(PracticeTask task, Measurand measurand) {
    Optional<TargetRange> target = target(task, q -> isAbout(q, measurand), measurand.dimension());
    if (measurand.dimension() == Dimension.TEMPERATURE) {
      return Optional.of(target.map(Expected::warmth).orElseGet(Expected::workable));
    }
    return target
        .map(Expected::around)
        .or(
            () ->
                WITH_WHAT_LIES_BELOW.contains(measurand.id())
                    ? target(task, PanelQuantities.FILM::equals, measurand.dimension())
                        .map(film -> around(film).onOldPaint(measurand.id().equals(BEFORE)))
                    : Optional.empty());
  }

  private static Optional<TargetRange> target(
      PracticeTask task, Predicate<String> quantity, Dimension dimension) {
    return task.criteria().stream()
        .filter(c -> c.judged() == Judged.MEAN || c.judged() == Judged.EACH)
        .filter(c -> c.dimension() == dimension && quantity.test(c.quantity()))
        .map(Criterion::target)
        .findFirst();
  }

  private static boolean isAbout(String quantity, Measurand m) {
    return quantity.equals(m.id())
        || PanelQuantities.find(quantity).filter(q -> q.like().contains(m.id())).isPresent();
  }

  /** Of what has a nought of its own, so that ten times as much means much more. */
  static Expected around(TargetRange target) {
    return new Expected(
        target,
        within(target, NEAR, NEAR_ONE_LIMIT),
        within(target, FAR, FAR_FROM_ONE_LIMIT),
        within(target, BEYOND, FAR_FROM_ONE_LIMIT));
  }

  private static TargetRange within(TargetRange target, double times, double fromOneLimit) {
    double low = target.hasLeast() ? target.least() / times : target.most() / fromOneLimit;
    double high = target.hasMost() ? target.most() * times : target.least() * fromOneLimit;
    return new TargetRange(Math.min(low, high), Math.max(low, high));
  }

  /**
   * A gauge reads the old paint along with the new: that can be several times the new film, and
   * before painting there may be none. Filler may lie below, so that none is too thick to believe.
   */
  private Expected onOldPaint(boolean before) {
    return new Expected(
        new TargetRange(before ? 0 : asked.least(), usual.most()),
        new TargetRange(before ? 0 : near.least(), usual.most()),
        new TargetRange(before ? 0 : usual.least(), usual.most()),
        before ? ANY : TargetRange.atLeast(believable.least()));
  }

  private static Expected warmth(TargetRange target) {
    return new Expected(target, wider(target, NEAR_WARMTH), wider(target, FAR_WARMTH), ANY);
  }

  private static Expected workable() {
    return new Expected(WORKABLE, WORKABLE, WORKABLE, ANY);
  }

  private static TargetRange wider(TargetRange range, double by) {
    return new TargetRange(range.least() - by, range.most() + by);
  }
}
