package lapline.trade.spray;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Valid;

/**
 * How wide the fan is on the panel at a gun distance, at unchanged gun settings.
 *
 * <p>Point source: width ∝ distance, W(h) = 2 h tan φ. Derived from first principles; real fans
 * fall short of it far from the gun.
 *
 * @param width fan width on a test pattern, metres, more than 0
 * @param distance gun distance at which it was shot, metres, more than 0
 */
public record Fan(double width, double distance) {

  public Fan {
    Valid.positive("width", width);
    Valid.positive("distance", distance);
  }

  /**
   * A fan known by its angle instead of a test pattern: W = 2 h tan φ.
   *
   * @param fullAngle radians, more than 0, less than π
   * @param distance gun distance it is wanted at, metres, more than 0
   */
  public static Fan ofAngle(double fullAngle, double distance) {
    Valid.positive("fullAngle", fullAngle);
    Valid.between("fullAngle", fullAngle, 0, Math.nextDown(Math.PI));
    return new Fan(2 * Valid.positive("distance", distance) * Math.tan(fullAngle / 2), distance);
  }

  /** Half the fan angle, radians. */
  public double halfAngle() {
    return Math.atan(width / (2 * distance));
  }

  /**
   * Width in metres at another distance.
   *
   * @param otherDistance metres, more than 0
   */
  public double widthAt(double otherDistance) {
    return width * Valid.positive("otherDistance", otherDistance) / distance;
  }

  /**
   * Width in metres of a fan that is tilted about the line of its stroke, so that one end is
   * nearer.
   *
   * @param otherDistance of the gun above the panel, metres, more than 0
   * @param tilt radians; with half the fan's angle less than π/2, either way
   */
  public double widthAt(double otherDistance, double tilt) {
    return widthAt(otherDistance) * new Heel(tilt, halfAngle()).widthRatio();
  }

  /**
   * Width at a measured distance; the test pattern itself is taken as exact.
   *
   * @param otherDistance metres, more than 0
   */
  public Estimate widthAt(Estimate otherDistance) {
    Valid.positive("otherDistance", otherDistance.value());
    return Gum.scale(width / distance, otherDistance);
  }

  /** Thickest film of a stroke against that at the test distance, at the same speed: ∝ 1/h. */
  public double strokePeakAt(double otherDistance) {
    return distance / Valid.positive("otherDistance", otherDistance);
  }

  /** Thickest film of a spot sprayed in place against that at the test distance: ∝ 1/h². */
  public double spotPeakAt(double otherDistance) {
    double ratio = strokePeakAt(otherDistance);
    return ratio * ratio;
  }
}
