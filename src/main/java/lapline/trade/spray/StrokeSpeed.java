package lapline.trade.spray;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Valid;

/** How fast the gun travels along a pass, from its length and its time. */
public final class StrokeSpeed {
  private StrokeSpeed() {}

  /**
   * Speed in m/s; uncertainty to first order, length and time independent.
   *
   * @param length of the stroke, trigger on to trigger off, metres, more than 0
   * @param time for it, seconds, more than 0
   */
  public static Estimate of(Estimate length, Estimate time) {
    Valid.positive("length", length.value());
    Valid.positive("time", time.value());
    return Gum.ratio(length, time);
  }
}
