package lapline.trade.stroke;

/**
 * A place on a panel where film can be read.
 *
 * @param x along the stroke from the left edge, metres
 * @param y across the strokes from the lower edge, metres
 */
public record Spot(double x, double y) {

  double from(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
