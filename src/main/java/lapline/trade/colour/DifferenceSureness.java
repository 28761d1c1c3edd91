package lapline.trade.colour;

import java.util.Arrays;
import java.util.Comparator;
import lapline.trade.colour.Ciede2000.Steps;
import lapline.trade.measure.Valid;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How surely two colours truly lie within so many steps of each other, when each was read with an
 * error.
 *
 * <p>A difference is no normal value: it cannot be less than 0, and two readings of one and the
 * same colour differ by more than nothing on average. So the errors are carried in the three parts
 * of CIEDE2000, with its weights held at the mean of the two readings, and the chance of lying
 * inside the ellipsoid of that many steps is integrated (JCGM 106:2012, 7.2, in three dimensions).
 * Accuracy: 1e-6, as long as the errors are small against the colour space (below 2 in each
 * coordinate).
 */
final class DifferenceSureness {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final GaussIntegrator NODES = new GaussIntegratorFactory().legendre(48);

  /** Beyond so many standard deviations nothing is left that counts. */
  private static final double FAR = 8;

  /** One independent part of the difference, in steps as seen. */
  private record Part(double mean, double deviation) {}

  private final Part[] parts;

  private DifferenceSureness(Part[] parts) {
    this.parts = parts;
  }

  /**
   * @param error of the difference between the two readings
   */
  static DifferenceSureness of(Steps steps, ReaderError error) {
    Part lightness = new Part(steps.lightness(), error.lightness() / steps.weights().lightness());
    Part[] plane = new Plane(steps, error.colour()).parts();
    Part[] parts = {lightness, plane[0], plane[1]};
    // parts without an error first, so that the last one has the smoothest closed form
    Arrays.sort(parts, Comparator.comparingDouble(Part::deviation));
    return new DifferenceSureness(parts);
  }

  /** Probability that the true difference is at most this many steps. */
  double within(double steps) {
    Valid.positive("steps", steps);
    return Math.min(1, Math.max(0, within(0, steps * steps)));
  }

  private double within(int from, double roomSquared) {
    if (roomSquared < 0) {
      return 0;
    }
    if (from == parts.length) {
      return 1;
    }
    Part part = parts[from];
    double room = Math.sqrt(roomSquared);
    if (part.deviation == 0) {
      return within(from + 1, roomSquared - part.mean * part.mean);
    }
    return from == parts.length - 1 ? share(part, room) : spread(part, room, from);
  }

  private static double share(Part part, double room) {
    double low = (-room - part.mean) / part.deviation;
    double high = (room - part.mean) / part.deviation;
    return NORMAL.probability(low, high);
  }

  /** Over the angle in x = room · sin t, which takes the root at the rim out of the integrand. */
  private double spread(Part part, double room, int from) {
    double low = Math.max(-room, part.mean - FAR * part.deviation);
    double high = Math.min(room, part.mean + FAR * part.deviation);
    if (!(low < high)) {
      return 0;
    }
    double start = Math.asin(low / room);
    double middle = (start + Math.asin(high / room)) / 2;
    double half = middle - start;
    return half
        * NODES.integrate(
            t -> {
              double x = room * Math.sin(middle + half * t);
              double density = NORMAL.density((x - part.mean) / part.deviation) / part.deviation;
              return density
                  * room
                  * Math.cos(middle + half * t)
                  * within(from + 1, room * room - x * x);
            });
  }

  /**
   * Chroma and hue, whose errors hang together since a* is stretched, and which are felt together
   * among blues: turned until neither does.
   */
  private static final class Plane {
    private final double chroma;
    private final double hue;
    private final double crossed;
    // square root of their covariance, lower triangle
    private final double l11;
    private final double l21;
    private final double l22;

    Plane(Steps steps, double error) {
      chroma = steps.chroma();
      hue = steps.hue();
      crossed = steps.crossed();
      double cos = steps.hues().cos();
      double sin = steps.hues().sin();
      double a = steps.stretch() * error;
      double perChroma = steps.weights().chroma();
      double perHue = steps.weights().hue();
      double varC = (a * a * cos * cos + error * error * sin * sin) / (perChroma * perChroma);
      double varH = (a * a * sin * sin + error * error * cos * cos) / (perHue * perHue);
      double cov = (error * error - a * a) * sin * cos / (perChroma * perHue);
      l11 = Math.sqrt(varC);
      l21 = l11 == 0 ? 0 : cov / l11;
      l22 = Math.sqrt(Math.max(0, varH - l21 * l21));
    }

    Part[] parts() {
      if (l11 == 0 || l22 == 0) {
        return new Part[] {new Part(certain(), 0), new Part(0, 0)};
      }
      double b11 = l11 * l11 + crossed * l11 * l21 + l21 * l21;
      double b12 = l22 * (l21 + crossed * l11 / 2);
      double b22 = l22 * l22;
      double turned = Math.atan2(2 * b12, b11 - b22) / 2;
      double z1 = chroma / l11;
      double z2 = (hue - l21 * z1) / l22;
      return new Part[] {
        part(b11, b12, b22, Math.cos(turned), Math.sin(turned), z1, z2),
        part(b11, b12, b22, -Math.sin(turned), Math.cos(turned), z1, z2)
      };
    }

    private static Part part(
        double b11, double b12, double b22, double u, double v, double z1, double z2) {
      double size = Math.sqrt(Math.max(0, b11 * u * u + 2 * b12 * u * v + b22 * v * v));
      return new Part(size * (u * z1 + v * z2), size);
    }

    private double certain() {
      return Math.sqrt(Math.max(0, chroma * chroma + hue * hue + crossed * chroma * hue));
    }
  }
}
