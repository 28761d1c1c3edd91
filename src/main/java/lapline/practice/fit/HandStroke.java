package lapline.practice.fit;

import lapline.trade.spray.Stroke;

/**
 * One stroke of a hand over a panel of some width: arc, drift and ends together.
 *
 * <p>Less of the paint arrives from further away; the share lost per doubling of the distance is an
 * assumption of this course, since no public table of it was found.
 */
record HandStroke(Hand hand, double width) implements Stroke {

  private static final double LOST_AT_TWICE_THE_DISTANCE = 0.3;

  @Override
  public double distance(double x) {
    double along = Math.max(0, Math.min(1, x / width));
    return (hand.distance + (hand.distanceAtEnd - hand.distance) * along) / cosine(x);
  }

  @Override
  public double deposit(double x) {
    double end = Math.max(0, Math.min(x, width - x));
    double fade = Math.max(0, 1 - end / hand.lingerLength);
    double cos = cosine(x);
    double ends = Math.max(0, 1 + hand.linger * fade * fade);
    double drift = 1 + hand.driftAlong * (Math.max(0, Math.min(1, x / width)) - 0.5);
    double arrives = Math.max(0.1, 1 - LOST_AT_TWICE_THE_DISTANCE * (distance(x) - 1));
    return cos * cos * ends * drift * arrives;
  }

  private double cosine(double x) {
    return Double.isInfinite(hand.reach) ? 1 : hand.reach / Math.hypot(hand.reach, x - width / 2);
  }
}
