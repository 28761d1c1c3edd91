package lapline.practice.fit;

import lapline.trade.spray.Stroke;

/** One stroke of a hand over a panel of some width: arc, drift and ends together. */
record HandStroke(Hand hand, double width) implements Stroke {

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
    return cos * cos * Math.max(0, 1 + hand.linger * fade * fade);
  }

  private double cosine(double x) {
    return Double.isInfinite(hand.reach) ? 1 : hand.reach / Math.hypot(hand.reach, x - width / 2);
  }
}
