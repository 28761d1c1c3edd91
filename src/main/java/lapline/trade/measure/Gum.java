package lapline.trade.measure;

import java.util.List;

/**
 * Uncertainty of what is computed from readings: the law of propagation for independent inputs and
 * the Welch–Satterthwaite effective degrees of freedom (JCGM 100:2008, equations 10 and G.2b).
 */
public final class Gum {
  private Gum() {}

  /** An input with its sensitivity coefficient ∂f/∂x. */
  public record Part(double sensitivity, Estimate input) {}

  /** A computed value from its inputs; an empty list gives uncertainty 0. */
  public static Estimate combine(double value, List<Part> parts) {
    double variance = 0;
    double weighted = 0;
    for (Part p : parts) {
      double v = square(p.sensitivity() * p.input().standardUncertainty());
      variance += v;
      weighted += v * v / p.input().degreesOfFreedom();
    }
    double dof = weighted > 0 ? variance * variance / weighted : Double.POSITIVE_INFINITY;
    return new Estimate(value, Math.sqrt(variance), dof);
  }

  public static Estimate difference(Estimate a, Estimate b) {
    return combine(a.value() - b.value(), List.of(new Part(1, a), new Part(-1, b)));
  }

  public static Estimate sum(List<Estimate> terms) {
    double total = terms.stream().mapToDouble(Estimate::value).sum();
    return combine(total, terms.stream().map(t -> new Part(1, t)).toList());
  }

  public static Estimate product(Estimate a, Estimate b) {
    return combine(a.value() * b.value(), List.of(new Part(b.value(), a), new Part(a.value(), b)));
  }

  /**
   * @throws MeasureException when the divisor is 0
   */
  public static Estimate ratio(Estimate a, Estimate b) {
    if (b.value() == 0) {
      throw new MeasureException("divisor", 0, "not 0");
    }
    double value = a.value() / b.value();
    return combine(value, List.of(new Part(1 / b.value(), a), new Part(-value / b.value(), b)));
  }

  public static Estimate scale(double factor, Estimate a) {
    return new Estimate(
        factor * a.value(), Math.abs(factor) * a.standardUncertainty(), a.degreesOfFreedom());
  }

  /**
   * Mean of repeated readings of one thing with an instrument whose own uncertainty is common to
   * all: type A s/√n with n − 1 degrees of freedom, joined by the instrument's type B.
   *
   * @param values one or more readings in SI
   * @param instrument standard uncertainty of one reading, taken as known, not lessened by
   *     repeating
   */
  public static Estimate mean(double[] values, double instrument) {
    Summary s = Summary.of(values);
    Estimate typeB = Estimate.of(s.mean(), instrument);
    if (values.length < 2) {
      return typeB;
    }
    double typeA = s.standardDeviation() / Math.sqrt(values.length);
    Estimate a = new Estimate(s.mean(), typeA, values.length - 1.0);
    return combine(s.mean(), List.of(new Part(1, a), new Part(1, typeB)));
  }

  /** Standard uncertainty of anything within ± half width, all equally likely (4.3.7). */
  public static double rectangular(double halfWidth) {
    return halfWidth / Math.sqrt(3);
  }

  /** Standard uncertainty of a value within ± half width, likelier in the middle (4.3.9). */
  public static double triangular(double halfWidth) {
    return halfWidth / Math.sqrt(6);
  }

  /** Standard uncertainty of a scale that shows steps of this size (F.2.2.1). */
  public static double resolution(double step) {
    return step / Math.sqrt(12);
  }

  private static double square(double x) {
    return x * x;
  }
}
