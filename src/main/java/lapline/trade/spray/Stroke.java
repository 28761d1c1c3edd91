package lapline.trade.spray;

import java.util.function.DoubleUnaryOperator;
import lapline.trade.measure.Valid;

/**
 * What the hand does along a stroke: how far the gun is from the panel and how much paint falls per
 * metre, both against the middle of a steady stroke.
 */
public interface Stroke {

  /** Gun distance at x over the intended one; more than 0. The fan's width goes with it. */
  double distance(double x);

  /** Paint per metre of stroke at x over the intended amount; 0 or more. */
  double deposit(double x);

  /**
   * Even distance and speed, with the trigger pulled at one place and let go at another.
   *
   * <p>The fan's own thickness along the stroke is left out, so the film ends as if cut.
   *
   * @param from x where paint begins, metres, finite
   * @param to x where it ends, metres, beyond {@code from}
   */
  static Stroke triggered(double from, double to) {
    Valid.finite("from", from);
    Valid.finite("to", to);
    Valid.positive("to − from", to - from);
    return with(x -> 1, x -> x >= from && x < to ? 1 : 0);
  }

  /** Even distance, even speed. */
  static Stroke steady() {
    return with(x -> 1, x -> 1);
  }

  /**
   * The gun turned about a wrist that stays where it is, at an even rate.
   *
   * <p>At angle θ = atan((x − middle) / reach) distance is 1/cos θ, deposit cos²θ, so film cos³θ.
   * Derived from first principles.
   *
   * @param middle x opposite the wrist, metres
   * @param reach distance from wrist to panel there, metres, more than 0
   */
  static Stroke arcing(double middle, double reach) {
    Valid.finite("middle", middle);
    Valid.positive("reach", reach);
    return with(
        x -> 1 / Math.cos(Math.atan((x - middle) / reach)),
        x -> Math.pow(Math.cos(Math.atan((x - middle) / reach)), 2));
  }

  /**
   * Distance running evenly from one value to another, speed even.
   *
   * @param from x of the start, metres
   * @param to x of the end, metres, not {@code from}
   * @param atStart distance at the start over the intended one, more than 0
   * @param atEnd the same at the end, more than 0
   */
  static Stroke drifting(double from, double to, double atStart, double atEnd) {
    Valid.finite("from", from);
    Valid.finite("to", to);
    Valid.positive("length", Math.abs(to - from));
    Valid.positive("atStart", atStart);
    Valid.positive("atEnd", atEnd);
    return with(
        x -> atStart + (atEnd - atStart) * Math.max(0, Math.min(1, (x - from) / (to - from))),
        x -> 1);
  }

  private static Stroke with(DoubleUnaryOperator distance, DoubleUnaryOperator deposit) {
    return new Stroke() {
      @Override
      public double distance(double x) {
        return distance.applyAsDouble(x);
      }

      @Override
      public double deposit(double x) {
        return deposit.applyAsDouble(x);
      }
    };
  }
}
