package lapline.trade.spray;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * A gun tilted about the line of its stroke, so that one end of the fan is nearer the panel than
 * the other; not arcing, which turns the gun along the stroke.
 *
 * <p>Point-source geometry: the paint of one ray of the fan spreads over the panel as cos³ of the
 * angle between ray and panel normal. Derived here from first principles.
 *
 * @param tilt angle between gun axis and panel normal, radians; positive thins the end at u = +1
 * @param halfFan half the fan angle, radians, more than 0; |tilt| + halfFan below π/2, or one end
 *     of the fan misses the panel
 */
public record Heel(double tilt, double halfFan) {

  public Heel {
    Valid.finite("tilt", tilt);
    Valid.positive("halfFan", halfFan);
    if (Math.abs(tilt) + halfFan >= Math.PI / 2) {
      throw new MeasureException("tilt", tilt, "less than π/2 − halfFan, either way");
    }
  }

  /**
   * Paint per area and time at the far end (u = +1), relative to a ray that meets the panel square.
   */
  public double farEnd() {
    return cube(Math.cos(tilt + halfFan));
  }

  /** The same at the near end (u = −1). */
  public double nearEnd() {
    return cube(Math.cos(tilt - halfFan));
  }

  /** Where the far end of the fan meets the panel, over the gun's height above it. */
  double farReach() {
    return Math.tan(tilt + halfFan);
  }

  /** Where the near end of the fan meets the panel, over the gun's height above it; negative. */
  double nearReach() {
    return Math.tan(tilt - halfFan);
  }

  /** Width of the tilted fan on the panel over that of the upright fan at the same height; ≥ 1. */
  public double widthRatio() {
    return (farReach() - nearReach()) / (2 * Math.tan(halfFan));
  }

  /** How far the middle of the fan moves on the panel, over the upright fan's width. */
  public double centreShift() {
    return (farReach() + nearReach()) / (4 * Math.tan(halfFan));
  }

  private static double cube(double x) {
    return x * x * x;
  }
}
