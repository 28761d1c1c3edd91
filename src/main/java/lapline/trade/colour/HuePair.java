package lapline.trade.colour;

/**
 * The hues of two colours taken together: the direction half way between them, the shorter way
 * round, and how far they lie apart, ΔH′ = 2 √(C₁C₂) sin(Δh/2).
 *
 * <p>Worked out from the coordinates alone, for arcs and their sines would take most of the time of
 * a colour difference.
 *
 * @param cos cosine of the mean hue
 * @param sin sine of it
 * @param step ΔH′, positive where the second colour lies anticlockwise of the first
 */
record HuePair(double cos, double sin, double step) {
  /** Where the product of two chromas is less, one of them is a grey and has no hue. */
  static final double GREY = 1e-100;

  /**
   * @param c1 distance of (a1, b1) from grey, c2 that of (a2, b2)
   */
  static HuePair of(double a1, double b1, double c1, double a2, double b2, double c2) {
    double product = c1 * c2;
    if (product < GREY) {
      return withGrey(a1 + a2, b1 + b2, c1 + c2);
    }
    // both drawn to one distance from grey, so that the middle of their ends lies half way round
    double x1 = a1 * c2;
    double y1 = b1 * c2;
    double x2 = a2 * c1;
    double y2 = b2 * c1;
    double across = a1 * b2 - a2 * b1;
    if (x1 * x2 + y1 * y2 > 0) {
      double per = 1 / Ciede2000.length(x1 + x2, y1 + y2);
      return new HuePair((x1 + x2) * per, (y1 + y2) * per, 2 * Math.sqrt(product) * across * per);
    }
    boolean anticlockwise = across > 0 || across == 0 && (b1 > 0 || b1 == 0 && a1 > 0);
    return anticlockwise
        ? apart(x1 - x2, y1 - y2, Math.sqrt(product))
        : apart(x2 - x1, y2 - y1, -Math.sqrt(product));
  }

  /** The hue of the other one, and no step of hue is felt. */
  private static HuePair withGrey(double a, double b, double chroma) {
    return chroma == 0 ? new HuePair(1, 0, 0) : new HuePair(a / chroma, b / chroma, 0);
  }

  /**
   * Far apart the middle of the ends is nearly grey; the mean hue is square to the line between.
   */
  private static HuePair apart(double x, double y, double signedMean) {
    double apart = Ciede2000.length(x, y);
    return new HuePair(-y / apart, x / apart, apart / signedMean);
  }

  /** Mean hue, degrees. */
  double degrees() {
    return Hue.degrees(cos, sin);
  }
}
