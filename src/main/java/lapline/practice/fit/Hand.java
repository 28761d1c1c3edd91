package lapline.practice.fit;

import lapline.trade.spray.Stroke;

/**
 * How someone moves the gun over a practice panel, for {@link PanelSimulation}; start from {@link
 * #steady} and add what goes wrong. Lengths in metres; every method returns a new hand.
 */
public final class Hand implements Cloneable {
  final double spacing;
  final double speed;
  double spacingJitter;
  double speedJitter;
  double reach = Double.POSITIVE_INFINITY;
  double distance = 1;
  double distanceAtEnd = 1;
  double linger;
  double lingerLength = 0.1;
  double driftAcross;
  double driftAlong;
  double heel;
  double beyondEdges = 0.5;
  double widerStepAt;
  double widerStepBy;

  private Hand(double spacing, double speed) {
    this.spacing = spacing;
    this.speed = speed;
  }

  /**
   * Straight, even, square, and well past the edges.
   *
   * @param spacing between passes, metres, more than 0
   * @param speed of the stroke, m/s, more than 0
   */
  public static Hand steady(double spacing, double speed) {
    return new Hand(spacing, speed);
  }

  /**
   * @param ofSpacing standard deviation of each step, as a share of it
   * @param ofSpeed standard deviation from pass to pass, as a share
   */
  public Hand straying(double ofSpacing, double ofSpeed) {
    Hand other = copy();
    other.spacingJitter = ofSpacing;
    other.speedJitter = ofSpeed;
    return other;
  }

  /**
   * @param fromWrist from a wrist that stays in place to the panel, metres
   */
  public Hand arcing(double fromWrist) {
    Hand other = copy();
    other.reach = fromWrist;
    return other;
  }

  /**
   * Gun distance over the intended one, which also loses paint, see {@link HandStroke}; at the left
   * and at the right end of the panel.
   *
   * @param left more than 0, as is {@code right}
   */
  public Hand distances(double left, double right) {
    Hand other = copy();
    other.distance = left;
    other.distanceAtEnd = right;
    return other;
  }

  /**
   * @param share more paint right at both ends of the stroke; negative, to −1, where the trigger is
   *     let go early
   * @param length over which that fades, metres, more than 0
   */
  public Hand lingering(double share, double length) {
    Hand other = copy();
    other.linger = share;
    other.lingerLength = length;
    return other;
  }

  /**
   * @param share change of film from the left to the right end, as by a stroke that slows down
   */
  public Hand driftingAlong(double share) {
    Hand other = copy();
    other.driftAlong = share;
    return other;
  }

  /**
   * @param share change of film from the lower to the upper edge
   */
  public Hand driftingAcross(double share) {
    Hand other = copy();
    other.driftAcross = share;
    return other;
  }

  /**
   * @param radians turned about the stroke; positive makes the lower side of each pass heavy
   */
  public Hand heeled(double radians) {
    Hand other = copy();
    other.heel = radians;
    return other;
  }

  /**
   * @param metres how far past the lower and the upper edge passes go on; negative stops short
   */
  public Hand stoppingBeyond(double metres) {
    Hand other = copy();
    other.beyondEdges = metres;
    return other;
  }

  /**
   * One step wider than the others.
   *
   * @param height where on the panel
   * @param by metres; negative for narrower
   */
  public Hand stepping(double height, double by) {
    Hand other = copy();
    other.widerStepAt = height;
    other.widerStepBy = by;
    return other;
  }

  /** What it does along a panel of this width. */
  Stroke stroke(double width) {
    return new HandStroke(this, width);
  }

  private Hand copy() {
    try {
      return (Hand) clone();
    } catch (CloneNotSupportedException e) {
      throw new AssertionError(e);
    }
  }
}
