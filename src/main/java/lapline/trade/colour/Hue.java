package lapline.trade.colour;

/** Hue angles, in degrees from the red axis towards yellow. */
final class Hue {
  private Hue() {}

  /** 0 to 360, 360 left out; 0 at the grey point. */
  static double degrees(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double h = Math.toDegrees(Math.atan2(b, a));
    // of an angle so little below 0 that adding 360 rounds up to it
    double turned = h < 0 ? h + 360 : h;
    return turned == 360 ? 0 : turned;
  }

  static double cosine(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
