package lapline.trade.spray;

import java.util.stream.DoubleStream;
import lapline.trade.measure.Valid;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** One period of the film that endlessly many even passes leave, ready to be integrated. */
final class RipplePeriod {
  private static final GaussIntegrator HALF_TURN =
      new GaussIntegratorFactory().legendre(80, 0, Math.PI);
  private static final int LOOKS = 400;
  private static final double HAIR = 1e-13;

  private final FanProfile profile;
  private final double step;
  private double least = Double.POSITIVE_INFINITY;
  private double most = Double.NEGATIVE_INFINITY;

  RipplePeriod(FanProfile profile, double overlap) {
    this.profile = profile;
    this.step = 2 * (1 - Valid.between("overlap", overlap, -1, 0.95));
  }

  Ripple ripple() {
    double[] bounds = bounds();
    double sum = 0;
    double squares = 0;
    for (int i = 0; i + 1 < bounds.length; i++) {
      double from = bounds[i];
      double to = bounds[i + 1];
      if (to - from > 1e-12) {
        sum += integrate(from, to, 1);
        squares += integrate(from, to, 2);
        look(from, to);
      }
    }
    double mean = sum / step;
    double variance = Math.max(0, squares / step - mean * mean);
    return new Ripple(mean, Math.sqrt(variance), least, most);
  }

  /** Where a pass begins or ends within the period that starts at a middle of a fan. */
  private double[] bounds() {
    return DoubleStream.of(0, floorMod(-1), floorMod(1), step / 2, step).sorted().toArray();
  }

  private double floorMod(double u) {
    return u - step * Math.floor(u / step);
  }

  private double filmAt(double u) {
    double film = 0;
    for (int k = (int) Math.ceil((-1 - u) / step); u + k * step <= 1; k++) {
      film += profile.at(u + k * step);
    }
    return film;
  }

  private double integrate(double from, double to, int power) {
    return HALF_TURN.integrate(
        turn -> Math.pow(filmAt(at(from, to, turn)), power) * Math.sin(turn) * (to - from) / 2);
  }

  /** A hair inside both bounds, where a pass with blunt ends jumps. */
  private void look(double from, double to) {
    for (int i = 0; i <= LOOKS; i++) {
      double film = filmAt(at(from + HAIR, to - HAIR, Math.PI * i / LOOKS));
      least = Math.min(least, film);
      most = Math.max(most, film);
    }
  }

  /** Runs from one bound to the other as the turn goes from 0 to π, slowly near both. */
  private static double at(double from, double to, double turn) {
    return from + (to - from) * (1 - Math.cos(turn)) / 2;
  }
}
