package lapline.trade.stroke;

import lapline.trade.measure.Valid;

/**
 * A place on a panel where film can be read.
 *
 * @param x along the stroke from the left edge, metres, finite
 * @param y across the strokes from the lower edge, metres, finite
 */
public record Spot(double x, double y) {

  public Spot {
    Valid.finite("x", x);
    Valid.finite("y", y);
  }

  double from(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
