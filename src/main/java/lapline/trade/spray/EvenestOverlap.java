package lapline.trade.spray;

import java.util.function.ToDoubleFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * The overlap at which endlessly many even passes lie most even, while a pass overlaps no other but
 * its neighbours: 0 to half a fan.
 *
 * <p>Which overlap is best hangs on the fan's shape and on what is called uneven, so both measures
 * are here. Beyond half a fan every shape becomes more even and less particular; that is no reason
 * to call half a fan best. Published for the parabola: 0.29 to 0.31 with a variance of about 0.0025
 * of the peak squared ('Coating uniformity with a uniform robotic spray gun velocity', a university
 * journal). Accuracy: 1e-6 of the overlap.
 */
public final class EvenestOverlap {
  private static final int LOOKS = 50;
  private static final double MOST = 0.5;

  private EvenestOverlap() {}

  /** Least standard deviation over mean. */
  public static double byVariation(FanProfile profile) {
    return least(profile, Ripple::variation);
  }

  /** Least variance, in units of a single stroke; favours a thinner film than variation does. */
  public static double byVariance(FanProfile profile) {
    return least(profile, r -> r.spread() * r.spread());
  }

  /** Looked for on a grid first, since an ellipse has a second valley towards half a fan. */
  private static double least(FanProfile profile, ToDoubleFunction<Ripple> unevenness) {
    int best = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= LOOKS; i++) {
      double here = unevenness.applyAsDouble(Ripple.ofEvenPasses(profile, MOST * i / LOOKS));
      if (here < lowest) {
        lowest = here;
        best = i;
      }
    }
    double from = MOST * Math.max(0, best - 1) / LOOKS;
    double to = MOST * Math.min(LOOKS, best + 1) / LOOKS;
    double found =
        new BrentOptimizer(1e-8, 1e-9)
            .optimize(
                new MaxEval(200),
                GoalType.MINIMIZE,
                new SearchInterval(from, to),
                new UnivariateObjectiveFunction(
                    o -> unevenness.applyAsDouble(Ripple.ofEvenPasses(profile, o))))
            .getPoint();
    // an even band is flat at the end of the interval, which the search only nears
    double atFound = unevenness.applyAsDouble(Ripple.ofEvenPasses(profile, found));
    return atFound < lowest ? found : MOST * best / LOOKS;
  }
}
