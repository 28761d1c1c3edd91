package lapline.trade.colour;

import lapline.trade.measure.Valid;

/**
 * A colour in CIELAB, for the white that it was worked out with.
 *
 * <p>Source: ISO/CIE 11664-4:2019 (from memory). Exact to rounding: XYZ there and back agrees to
 * 1e-12 of the white.
 *
 * @param lightness L*, 0 for black, 100 for a perfect white, more for flake near the mirror angle
 * @param a red (+) against green (−)
 * @param b yellow (+) against blue (−)
 */
public record Lab(double lightness, double a, double b) {
  private static final double LINEAR_BELOW = 216.0 / 24389;
  private static final double SLOPE = 841.0 / 108;
  private static final double OFFSET = 16.0 / 116;

  public Lab {
    Valid.notNegative("L*", lightness);
    Valid.finite("a*", a);
    Valid.finite("b*", b);
  }

  /** Of measured tristimulus values under this white. */
  public static Lab of(Xyz colour, White white) {
    double x = compressed(colour.x() / white.perfect().x());
    double y = compressed(colour.y() / white.perfect().y());
    double z = compressed(colour.z() / white.perfect().z());
    return new Lab(Math.max(0, 116 * y - 16), 500 * (x - y), 200 * (y - z));
  }

  /**
   * Tristimulus values under this white.
   *
   * @throws lapline.trade.measure.MeasureException when no surface has such coordinates, for one of
   *     the three values would be less than 0
   */
  public Xyz toXyz(White white) {
    double y = (lightness + 16) / 116;
    return new Xyz(
        white.perfect().x() * expanded(y + a / 500),
        white.perfect().y() * expanded(y),
        white.perfect().z() * expanded(y - b / 200));
  }

  /** Distance from grey, C*ab. */
  public double chroma() {
    return Math.hypot(a, b);
  }

  /** Direction from grey in degrees, 0 to 360; 0 for a grey, which has none. */
  public double hue() {
    return Hue.degrees(a, b);
  }

  private static double compressed(double t) {
    return t > LINEAR_BELOW ? Math.cbrt(t) : SLOPE * t + OFFSET;
  }

  private static double expanded(double f) {
    double cube = f * f * f;
    double t = cube > LINEAR_BELOW ? cube : (f - OFFSET) / SLOPE;
    // black itself comes out a rounding error below nothing
    return Math.abs(t) < 1e-15 ? 0 : t;
  }
}
