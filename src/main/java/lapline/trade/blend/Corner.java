package lapline.trade.blend;

import lapline.trade.measure.Valid;

/**
 * A corner of an outline, in metres from the panel's lower left.
 *
 * @param x to the right, finite
 * @param y upwards, finite
 */
public record Corner(double x, double y) {

  public Corner {
    Valid.finite("x", x);
    Valid.finite("y", y);
  }
}
