package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.measure.Estimate;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** One quantity over several ways in which it may have come about, normal in each. */
final class Mixture {
  /** Of a normal distribution within {@link #SURE} standard deviations of its mean. */
  private static final double HELD = 0.95;

  private static final double SURE = 1.96;

  /** No distribution has a twentieth further off its mean than this (Chebyshev's inequality). */
  private static final double MOST_WIDER = Math.sqrt(1 / (1 - HELD)) / SURE;

  private static final int HALVINGS = 20;

  private final List<Part> parts = new ArrayList<>();
  private double whole;

  private record Part(Estimate value, double weight) {
    /** Share of it within so far of a middle. */
    double held(double middle, double within) {
      double u = value.standardUncertainty();
      return u == 0
          ? Math.abs(value.value() - middle) <= within ? 1 : 0
          : NormalDistribution.of(value.value(), u).probability(middle - within, middle + within);
    }
  }

  /**
   * @param weight against the others, more than 0
   */
  void add(Estimate value, double weight) {
    parts.add(new Part(value, weight));
    whole += weight;
  }

  /**
   * The mean, with a standard uncertainty whose interval of 95 % holds as much of the weight: the
   * standard deviation, and more than that where something hardly likely lies far off.
   */
  Estimate estimate() {
    double mean = 0;
    double square = 0;
    for (Part part : parts) {
      double spread = Math.hypot(part.value.value(), part.value.standardUncertainty());
      mean += part.weight * part.value.value() / whole;
      square += part.weight * spread * spread / whole;
    }
    double deviation = Math.sqrt(Math.max(0, square - mean * mean));
    return Estimate.of(mean, holding(mean, deviation));
  }

  private double holding(double mean, double deviation) {
    double least = deviation;
    double most = MOST_WIDER * deviation;
    for (int i = 0; i < HALVINGS && held(mean, SURE * least) < HELD; i++) {
      double middle = (least + most) / 2;
      if (held(mean, SURE * middle) < HELD) {
        least = middle;
      } else {
        most = middle;
      }
    }
    return least;
  }

  private double held(double mean, double within) {
    return parts.stream().mapToDouble(p -> p.weight * p.held(mean, within)).sum() / whole;
  }
}
