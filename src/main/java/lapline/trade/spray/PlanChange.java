package lapline.trade.spray;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;
import lapline.trade.spray.TransferLoss.Basis;

/**
 * One thing done otherwise at the booth, all else left as it is: what it makes of a plan, as likely
 * and at both ends of what is not known for sure.
 */
public sealed interface PlanChange {

  /** What the change is known from. */
  Basis basis();

  /** The plan after it, as likely. */
  StrokePlan likely(StrokePlan plan);

  /** The plan after it with the least film that may come of it; as likely where nothing is open. */
  default StrokePlan thinnest(StrokePlan plan) {
    return likely(plan);
  }

  /** The plan after it with the most film that may come of it; as likely where nothing is open. */
  default StrokePlan thickest(StrokePlan plan) {
    return likely(plan);
  }

  /**
   * The gun held at another distance: the fan widens with it, the passes stay where they are, and
   * less of the paint arrives from further away.
   *
   * @param to metres, more than 0
   * @param loss how much less
   */
  record Distance(double to, TransferLoss loss) implements PlanChange {
    public Distance {
      Valid.positive("to", to);
    }

    @Override
    public Basis basis() {
      return loss.basis();
    }

    @Override
    public StrokePlan likely(StrokePlan plan) {
      return losing(plan, loss.likely());
    }

    @Override
    public StrokePlan thinnest(StrokePlan plan) {
      return losing(plan, to > plan.distance() ? loss.most() : loss.least());
    }

    @Override
    public StrokePlan thickest(StrokePlan plan) {
      return losing(plan, to > plan.distance() ? loss.least() : loss.most());
    }

    private StrokePlan losing(StrokePlan plan, double lostAtTwice) {
      double known = plan.paint().transferEfficiency();
      double ratio = to / plan.distance();
      return plan.withDistance(to, TransferLoss.at(known, ratio, lostAtTwice));
    }
  }

  /**
   * The hand moved faster or slower: film ∝ 1 / speed, evenness unchanged.
   *
   * @param to m/s, more than 0
   */
  record Speed(double to) implements PlanChange {
    public Speed {
      Valid.positive("to", to);
    }

    @Override
    public Basis basis() {
      return Basis.DERIVED;
    }

    @Override
    public StrokePlan likely(StrokePlan plan) {
      return plan.withSpeed(to);
    }
  }

  /**
   * Passes laid closer or wider: film ∝ 1 / spacing, evenness as the profile has it.
   *
   * @param to share of the fan, −1 to 0.95
   */
  record ToOverlap(double to) implements PlanChange {
    public ToOverlap {
      Valid.between("to", to, -1, 0.95);
    }

    @Override
    public Basis basis() {
      return Basis.DERIVED;
    }

    @Override
    public StrokePlan likely(StrokePlan plan) {
      return plan.withSpacing(Overlap.spacing(to, plan.fanWidth()));
    }
  }

  /**
   * A step of the pressure on the paint in a pressure-fed gun, its tip and needle untouched.
   *
   * <p>Flow ∝ √p through the tip as through an orifice; where the paint is thick or the hose long
   * it goes nearer to ∝ p. So √p is taken as likely, and all between both as possible. A rule of
   * thumb: fan, atomisation and transfer change too, and no table of that is public. Not for the
   * air pressure of a gravity cup, which does not set the flow. Source: incompressible flow through
   * an orifice and through a pipe (Bernoulli; Hagen and Poiseuille), from memory.
   *
   * @param from pressure on the paint now, Pa above the air's, more than 0
   * @param to after the step, Pa, more than 0, from a quarter to four times {@code from}
   */
  record FluidPressure(double from, double to) implements PlanChange {
    public FluidPressure {
      Valid.positive("from", from);
      Valid.positive("to", to);
      if (to < from / 4 || to > from * 4) {
        throw new MeasureException("to", to, from / 4 + " to " + from * 4);
      }
    }

    @Override
    public Basis basis() {
      return Basis.RULE_OF_THUMB;
    }

    @Override
    public StrokePlan likely(StrokePlan plan) {
      return flowing(plan, 0.5);
    }

    @Override
    public StrokePlan thinnest(StrokePlan plan) {
      return flowing(plan, to > from ? 0.5 : 1);
    }

    @Override
    public StrokePlan thickest(StrokePlan plan) {
      return flowing(plan, to > from ? 1 : 0.5);
    }

    private StrokePlan flowing(StrokePlan plan, double exponent) {
      return plan.withFlow(plan.paint().flow() * Math.pow(to / from, exponent));
    }
  }
}
