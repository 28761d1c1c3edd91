package lapline.trade.spray;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
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
    double mean = overPieces((from, to) -> integrate(from, to, film -> film)) / step;
    // about the mean, since the difference of two squares would lose the digits of an even film
    double variance =
        overPieces((from, to) -> integrate(from, to, film -> (film - mean) * (film - mean))) / step;
    overPieces(this::look);
    return new Ripple(mean, Math.sqrt(variance), least, most);
  }

  private double overPieces(DoubleBinaryOperator piece) {
    double[] bounds = bounds();
    double sum = 0;
    for (int i = 0; i + 1 < bounds.length; i++) {
      if (bounds[i + 1] - bounds[i] > 1e-12) {
        sum += piece.applyAsDouble(bounds[i], bounds[i + 1]);
      }
    }
    return sum;
  }

  /** Where a pass has a corner within the period that starts at a middle of a fan. */
  private double[] bounds() {
    DoubleStream corners = Arrays.stream(profile.corners()).map(this::floorMod);
    return DoubleStream.concat(DoubleStream.of(0, step / 2, step), corners).sorted().toArray();
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

  private double integrate(double from, double to, DoubleUnaryOperator of) {
    return HALF_TURN.integrate(
        turn -> of.applyAsDouble(filmAt(at(from, to, turn))) * Math.sin(turn) * (to - from) / 2);
  }

  /** A hair inside both bounds, where a pass with blunt ends jumps; keeps what it sees. */
  private double look(double from, double to) {
    for (int i = 0; i <= LOOKS; i++) {
      double film = filmAt(at(from + HAIR, to - HAIR, Math.PI * i / LOOKS));
      least = Math.min(least, film);
      most = Math.max(most, film);
    }
    return 0;
  }

  /** Runs from one bound to the other as the turn goes from 0 to π, slowly near both. */
  private static double at(double from, double to, double turn) {
    return from + (to - from) * (1 - Math.cos(turn)) / 2;
  }
}
