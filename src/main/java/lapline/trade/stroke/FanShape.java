package lapline.trade.stroke;

/**
 * The film across a fan: (1 − u²)^(β−1) as {@link lapline.trade.spray.BetaProfile} has it, scaled
 * to the same paint, but with its rim blurred, and leaning to one side by a share that is odd in u
 * and so moves no paint out of the fan. With derivatives.
 *
 * <p>In the place of 1 − u² stands ε·ln(1 + exp((1 − u²)/ε)), with the blur ε. A hand's passes
 * stray by some millimetres, so that the film they leave has no corner at the rim of the fan, and a
 * search for the likeliest passes must not be caught in one. The fan is narrowed a little so that
 * its paint lies as far from its middle, in the mean square, as that of the sharp one: 1/(2β + 1).
 */
final class FanShape {
  /**
   * Beyond this, in half fans, next to nothing worth counting falls: less than 2 in 10,000 of the
   * peak.
   */
  static final double REACH = 1.3;

  /** For passes that lie as they were written down, as far as a hand strays: 6 mm on 230 mm. */
  static final double BLUR = 0.1;

  /** For passes where the readings have put them, about which they lie within 2 to 3 mm. */
  static final double SHARP = 0.03;

  /** Steps of the rule over the fan, each short beside the blurred rim. */
  private static final double STEPS_TIMES_BLUR = 6.4;

  private final double blur;
  private final double beta;
  private final double lean;
  private final double scale;
  private final double scaleSlope;
  private final double narrowing;
  private final double narrowingSlope;

  /** Film at the last place asked for, over the mean of the fan. */
  double at;

  /** Its derivative by u. */
  double byPlace;

  /** By ln β. */
  double byShape;

  /** By the lean. */
  double byLean;

  /** With the rim that a hand's straying blurs. */
  FanShape(double beta, double lean) {
    this(beta, lean, BLUR);
  }

  /**
   * @param blur of 1 − u², more than 0
   */
  FanShape(double beta, double lean, double blur) {
    this.blur = blur;
    this.beta = beta;
    this.lean = lean;
    double sum = 0;
    double logs = 0;
    double squares = 0;
    double both = 0;
    int steps = (int) Math.ceil(STEPS_TIMES_BLUR / blur);
    // the integrand and its slopes are nil at both ends, where the trapezoid rule has no error to
    // speak of
    for (int i = 1; i < steps; i++) {
      double u = REACH * (2.0 * i / steps - 1);
      double inside = blurred(1 - u * u);
      double film = Math.pow(inside, beta - 1);
      double log = Math.log(inside);
      sum += film;
      logs += film * log;
      squares += film * u * u;
      both += film * u * u * log;
    }
    double spread = squares / sum;
    double spreadSlope = both / sum - spread * logs / sum;
    this.narrowing = Math.sqrt((2 * beta + 1) * spread);
    this.narrowingSlope = (spread + (beta + 0.5) * spreadSlope) / narrowing;
    this.scale = steps / REACH / sum;
    this.scaleSlope = -logs / sum;
  }

  private double blurred(double v) {
    return blur * Math.log1p(Math.exp(v / blur));
  }

  /**
   * @param u between −{@link #REACH} and that
   */
  void place(double u) {
    double w = narrowing * u;
    double raised = Math.exp((1 - w * w) / blur);
    double inside = blur * Math.log1p(raised);
    double even = narrowing * scale * Math.pow(inside, beta - 1);
    double steep = -2 * (beta - 1) * w * raised / (1 + raised) / inside * even;
    double leaning = 1 + lean * u;
    at = even * leaning;
    byPlace = steep * narrowing * leaning + even * lean;
    byShape =
        beta
            * leaning
            * (even * (Math.log(inside) + scaleSlope + narrowingSlope / narrowing)
                + steep * u * narrowingSlope);
    byLean = even * u;
  }
}
