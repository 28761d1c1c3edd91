package lapline.practice;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/**
 * How good a value is for the practice score: 1 inside its target, falling off like a bell outside,
 * e^−½ at one 'fade' beyond the limit. The expectation over what the true value may be is taken, so
 * that the score moves smoothly and a guess earns no more than it is worth. The bell follows the
 * desirability functions of Derringer and Suich, Journal of Quality Technology 12 (1980), in
 * spirit; its shape is ours.
 */
final class Desirability {
  // abscissae and weights of 9-point Gauss–Hermite quadrature for the standard normal density;
  // exact for polynomials to degree 17; from the roots of He9, checked in the test by its moments
  private static final double[] AT = {
    -4.512745863399783,
    -3.205429002856470,
    -2.076847978677830,
    -1.023255663789133,
    0,
    1.023255663789133,
    2.076847978677830,
    3.205429002856470,
    4.512745863399783
  };
  private static final double[] WEIGHT = {
    2.234584400774658e-5, 2.789141321231769e-3, 4.991640676521788e-2, 2.440975028949394e-1,
    4.063492063492063e-1, 2.440975028949394e-1, 4.991640676521788e-2, 2.789141321231769e-3,
    2.234584400774658e-5
  };

  private Desirability() {}

  /** Desirability of a known value, 0 to 1. */
  static double of(double value, TargetRange target, double fade) {
    double outside = target.outsideBy(value) / fade;
    return outside == 0 ? 1 : Math.exp(-0.5 * outside * outside);
  }

  /** Its expectation where the value is uncertain. */
  static double expected(Estimate estimate, TargetRange target, double fade) {
    double sum = 0;
    for (int i = 0; i < AT.length; i++) {
      double value = estimate.value() + AT[i] * estimate.standardUncertainty();
      sum += WEIGHT[i] * of(value, target, fade);
    }
    return Math.min(1, sum);
  }
}
