package lapline.practice;

import java.util.Optional;
import lapline.practice.SprayPlan.Thing;
import lapline.trade.spray.PlanChange;
import lapline.trade.spray.StrokePlan;
import lapline.trade.spray.TransferLoss;
import lapline.trade.spray.TransferLoss.Basis;

/**
 * One thing changed at the booth: the plan as it is, as it would likely be, and with the least and
 * the most film that may come of it where that is not known for sure.
 *
 * @param basis what it rests on
 */
public record SprayChange(
    SprayPlan now, SprayPlan then, SprayPlan thinnest, SprayPlan thickest, Basis basis) {

  /**
   * What comes of a change; empty where passes would lie out of {@link SprayPlan#isWithinReach}
   * before or after it.
   *
   * @param to SI, in the range of the thing
   */
  public static Optional<SprayChange> of(SprayPlan now, Thing thing, double to) {
    boolean within = now.isWithinReach() && now.shapedBy(thing, to).isWithinReach();
    return within ? Optional.of(within(now, thing, to)) : Optional.empty();
  }

  private static SprayChange within(SprayPlan now, Thing thing, double to) {
    PlanChange change = atTheBooth(now, thing, to).orElse(null);
    SprayPlan set = now.with(thing, to);
    if (change == null) {
      return new SprayChange(now, set, set, set, Basis.DERIVED);
    }
    StrokePlan stroke = now.stroke();
    return new SprayChange(
        now,
        set.laid(change.likely(stroke)),
        set.laid(change.thinnest(stroke)),
        set.laid(change.thickest(stroke)),
        change.basis());
  }

  /** What moves more than its own number; empty for what is only set. */
  private static Optional<PlanChange> atTheBooth(SprayPlan now, Thing thing, double to) {
    return switch (thing) {
      case SPACING -> Optional.of(new PlanChange.ToOverlap(1 - to / now.fanWidth()));
      case SPEED -> Optional.of(new PlanChange.Speed(to));
      case DISTANCE -> Optional.of(new PlanChange.Distance(to, TransferLoss.assumed()));
      default -> Optional.empty();
    };
  }

  /** Whether the film that comes of it is only known from a least to a most. */
  public boolean isOpen() {
    return thinnest.wetFilm() < thickest.wetFilm();
  }
}
