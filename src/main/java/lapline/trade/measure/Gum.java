package lapline.trade.measure;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Uncertainty of what is computed from readings: the law of propagation to first order and the
 * Welch–Satterthwaite effective degrees of freedom.
 *
 * <p>u² = Σ (cᵢ uᵢ)² for independent inputs, Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ for correlated ones. Good where
 * the result is nearly straight over a few u of each input; a product of two noughts, whose slopes
 * are 0, is the exception that proves it. Source: JCGM 100:2008, equations 10, 16 and G.2b, numbers
 * from memory.
 */
public final class Gum {
  /** Coverage of twice the standard uncertainty of a normal value. */
  private static final double TWO_SIGMA = 0.954499736103642;

  private Gum() {}

  /**
   * An input with its sensitivity coefficient.
   *
   * @param sensitivity ∂f/∂x, unit of the result over unit of the input, finite
   */
  public record Part(double sensitivity, Estimate input) {

    public Part {
      Valid.finite("sensitivity", sensitivity);
    }

    /** What the input adds to the standard uncertainty of the result. */
    double uncertainty() {
      return Math.abs(sensitivity * input.standardUncertainty());
    }
  }

  /**
   * A computed value from its independent inputs; an empty list gives uncertainty 0.
   *
   * <p>Its interval holds 94 to 96.5 % where the inputs that weigh have four degrees of freedom or
   * more. With fewer this is what is published, and no more: simulated 88 to 98 %. A mean and a
   * difference of means have a rule of their own for that, {@link #mean} and {@link #difference}.
   */
  public static Estimate combine(double value, List<Part> parts) {
    double u = 0;
    for (Part part : parts) {
      u = Math.hypot(u, part.uncertainty());
    }
    return new Estimate(value, u, degreesOfFreedom(parts, u));
  }

  /** From each part's share of the whole, since fourth powers of micrometres would vanish. */
  private static double degreesOfFreedom(List<Part> parts, double u) {
    double sum = 0;
    for (Part part : parts) {
      sum += u == 0 ? 0 : Math.pow(part.uncertainty() / u, 4) / part.input().degreesOfFreedom();
    }
    return sum > 0 ? 1 / sum : Double.POSITIVE_INFINITY;
  }

  /**
   * A computed value from correlated inputs.
   *
   * @param correlations rᵢⱼ in the order of the parts: symmetric, 1 on the diagonal, −1 to 1
   * @return its degrees of freedom are the fewest of any input, for Welch–Satterthwaite holds for
   *     independent inputs only and this does not claim too many
   * @throws MeasureException when the correlations are none
   */
  public static Estimate combine(double value, List<Part> parts, double[][] correlations) {
    Valid.between("correlations.length", correlations.length, parts.size(), parts.size());
    double variance = 0;
    double freedom = Double.POSITIVE_INFINITY;
    for (int i = 0; i < parts.size(); i++) {
      Valid.between("correlations[i].length", correlations[i].length, parts.size(), parts.size());
      Valid.between("correlations[i][i]", correlations[i][i], 1, 1);
      for (int j = 0; j < parts.size(); j++) {
        double r = Valid.between("correlations[i][j]", correlations[i][j], -1, 1);
        Valid.between("correlations[j][i]", correlations[j][i], r, r);
        variance += signed(parts.get(i)) * signed(parts.get(j)) * r;
      }
      freedom = Math.min(freedom, parts.get(i).input().degreesOfFreedom());
    }
    return new Estimate(value, Math.sqrt(Math.max(0, variance)), freedom);
  }

  private static double signed(Part part) {
    return part.sensitivity() * part.input().standardUncertainty();
  }

  /**
   * Σ coefficient × input of independent inputs.
   *
   * @throws MeasureException when there are not as many coefficients as inputs
   */
  public static Estimate linear(double[] coefficients, List<Estimate> inputs) {
    Valid.between("coefficients.length", coefficients.length, inputs.size(), inputs.size());
    List<Part> parts =
        IntStream.range(0, coefficients.length)
            .mapToObj(i -> new Part(coefficients[i], inputs.get(i)))
            .toList();
    double value = parts.stream().mapToDouble(p -> p.sensitivity() * p.input().value()).sum();
    return combine(value, parts);
  }

  /**
   * a − b of independent inputs, both in one unit; equation 10 with slopes 1 and −1.
   *
   * <p>Of inputs with fewer than five degrees of freedom, such as means of three to five readings,
   * the result's are not those of equation G.2b but such that its interval holds 94 to 96 % ({@link
   * FewReadings}). At least 95 % is what it states of a mean of two readings, whose one deviation
   * says too little of a scatter: up to 98 %, with a gauge's error in it up to 99, and no rule that
   * makes sense keeps to 96; that none can hold exactly is known (Linnik, Statistical Problems with
   * Nuisance Parameters, 1968; from memory). At least 95 % too where means of three or four carry a
   * gauge's error of about a third of their scatter or more: up to 97 %, since how few readings
   * each has is then hidden in its number.
   */
  public static Estimate difference(Estimate a, Estimate b) {
    return FewReadings.joined(a.value() - b.value(), a, b);
  }

  /**
   * What two readings with one gauge differ by: what the gauge does wrong in both drops out.
   *
   * @param correlation of the errors of a and b, −1 to 1; 1 where both carry only the same error
   */
  public static Estimate difference(Estimate a, Estimate b, double correlation) {
    return combine(
        a.value() - b.value(),
        List.of(new Part(1, a), new Part(-1, b)),
        new double[][] {{1, correlation}, {correlation, 1}});
  }

  /** Σ of independent inputs, all in one unit; nothing adds up to 0 ± 0. */
  public static Estimate sum(List<Estimate> terms) {
    double total = terms.stream().mapToDouble(Estimate::value).sum();
    return combine(total, terms.stream().map(t -> new Part(1, t)).toList());
  }

  /** a b of independent inputs, in the product of their units; equation 10 with slopes b and a. */
  public static Estimate product(Estimate a, Estimate b) {
    return combine(a.value() * b.value(), List.of(new Part(b.value(), a), new Part(a.value(), b)));
  }

  /**
   * a / b of independent inputs, in the ratio of their units; good where b is many of its own
   * standard uncertainties from 0.
   *
   * @throws MeasureException when the divisor is 0
   */
  public static Estimate ratio(Estimate a, Estimate b) {
    if (b.value() == 0) {
      throw new MeasureException("divisor", 0, "not 0");
    }
    double value = a.value() / b.value();
    return combine(value, List.of(new Part(1 / b.value(), a), new Part(-value / b.value(), b)));
  }

  /**
   * A value times an exact number, such as a unit's factor.
   *
   * @param factor finite
   */
  public static Estimate scale(double factor, Estimate a) {
    Valid.finite("factor", factor);
    return new Estimate(
        factor * a.value(), Math.abs(factor) * a.standardUncertainty(), a.degreesOfFreedom());
  }

  /**
   * Mean of repeated readings of one thing with an instrument whose own uncertainty is common to
   * all: type A s/√n with n − 1 degrees of freedom, joined by the instrument's type B.
   *
   * <p>Its interval holds the truth 94 to 96 % of the time whatever the spread and the instrument,
   * that of two readings 94 to 96.5 %.
   *
   * @param values one or more readings in SI
   * @param instrument standard uncertainty of one reading, 0 or more, taken as known, not lessened
   *     by repeating
   */
  public static Estimate mean(double[] values, double instrument) {
    Summary s = Summary.of(values);
    return mean(s.mean(), s.standardDeviation(), values.length, instrument);
  }

  /**
   * The same of readings that are known by their mean and spread.
   *
   * @param mean finite
   * @param spread sample standard deviation, 0 or more; of no matter for one reading
   * @param readings how many, 1 or more
   */
  public static Estimate mean(double mean, double spread, int readings, double instrument) {
    Valid.between("readings", readings, 1, Integer.MAX_VALUE);
    Valid.notNegative("spread", spread);
    Estimate typeB = Estimate.of(mean, Valid.notNegative("instrument", instrument));
    if (readings == 1) {
      return typeB;
    }
    Estimate typeA = new Estimate(mean, spread / Math.sqrt(readings), readings - 1.0);
    return FewReadings.joined(mean, typeA, typeB);
  }

  /**
   * Standard uncertainty of anything within ± half width, all equally likely (4.3.7).
   *
   * @param halfWidth 0 or more, finite; the answer is in its unit
   */
  public static double rectangular(double halfWidth) {
    return Valid.notNegative("halfWidth", halfWidth) / Math.sqrt(3);
  }

  /**
   * Standard uncertainty of a value within ± half width, likelier in the middle (4.3.9).
   *
   * @param halfWidth 0 or more, finite; the answer is in its unit
   */
  public static double triangular(double halfWidth) {
    return Valid.notNegative("halfWidth", halfWidth) / Math.sqrt(6);
  }

  /**
   * Standard uncertainty of a scale that shows steps of this size (F.2.2.1).
   *
   * @param step 0 or more, finite; the answer is in its unit
   */
  public static double resolution(double step) {
    return Valid.notNegative("step", step) / Math.sqrt(12);
  }

  /**
   * Factor from standard to expanded uncertainty at 95.45 % coverage: 2 where the uncertainty is
   * well known, more for few degrees of freedom (G.6.4, Student's t at the real effective degrees).
   *
   * @param degreesOfFreedom more than 0; may be infinite
   */
  public static double coverageFactor(double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0)) {
      throw new MeasureException("degreesOfFreedom", degreesOfFreedom, "more than 0");
    }
    return ErrorShape.of(degreesOfFreedom).inverseCumulativeProbability((1 + TWO_SIGMA) / 2);
  }
}
