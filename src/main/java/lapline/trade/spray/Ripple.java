package lapline.trade.spray;

import java.util.Arrays;

/**
 * How uneven a film is: its mean, how far it strays and its extremes, in the unit of the film it
 * was taken from.
 *
 * @param spread standard deviation over the area
 */
public record Ripple(double mean, double spread, double least, double most) {

  /** Spread over mean, the coefficient of variation; NaN for no film. */
  public double variation() {
    return spread / mean;
  }

  /** Thinnest over thickest; NaN for no film. */
  public double evenness() {
    return least / most;
  }

  static Ripple ofEqualAreas(double[] film) {
    double mean = Arrays.stream(film).average().orElseThrow();
    double variance = Arrays.stream(film).map(f -> (f - mean) * (f - mean)).average().orElseThrow();
    return new Ripple(
        mean,
        Math.sqrt(variance),
        Arrays.stream(film).min().orElseThrow(),
        Arrays.stream(film).max().orElseThrow());
  }

  /**
   * Ripple of endlessly many even passes, in units of one stroke's mean film over its fan.
   *
   * <p>T(u) = Σ t(u − k·step) over one period, step = 2(1 − overlap) in fan halves. Integrated
   * piecewise between the places where a pass begins or ends, with nodes crowded there, so that the
   * steep ends of a profile do no harm. Mean is 1 / (1 − overlap) for every profile. Accuracy: 1e-6
   * relative for beta and measured profiles, 1e-5 for heeled ones.
   *
   * @param overlap fraction of the fan shared with the pass before, −1 to 0.95
   * @throws lapline.trade.measure.MeasureException for any other overlap
   */
  public static Ripple ofEvenPasses(FanProfile profile, double overlap) {
    return new RipplePeriod(profile, overlap).ripple();
  }
}
