package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How well the mean film of a sprayed panel can be known at the best from its readings and from
 * what was written down: the Cramér–Rao bound with priors (van Trees, Detection, Estimation, and
 * Modulation Theory, part I, 1968), with slopes of the simulator's own equations by differences.
 */
final class PanelBound {
  private final SprayedPanel panel;
  private final List<FilmAt> readings;
  private final List<Nudge> nudges = new ArrayList<>();

  /** One thing that may have been otherwise, in its standard deviations; all of size 1. */
  private record Nudge(DoubleConsumer by, double step, double prior) {}

  private PanelBound(SprayedPanel panel, PassPlan plan, List<FilmAt> readings) {
    this.panel = panel;
    this.readings = readings;
    nudge(d -> panel.film *= 1 + d, 0);
    nudge(d -> panel.fan *= 1 + 0.04 * d, 1);
    nudge(d -> panel.beta += 0.25 * d, 1);
    int first = 0;
    for (PassPlan.Coat coat : plan.coats()) {
      int after = first + coat.centrelines().size();
      for (int pass = first; pass < after; pass++) {
        List<double[]> beyond = panel.passes.subList(pass, after);
        double read = pass == first ? SprayedPanel.FIRST_READ : SprayedPanel.STEP_READ;
        nudge(d -> beyond.forEach(p -> p[0] += read * d), 1);
        double[] one = panel.passes.get(pass);
        nudge(d -> one[1] += 0.03 * d, 1);
      }
      first = after;
    }
  }

  private void nudge(DoubleConsumer by, double prior) {
    nudges.add(new Nudge(by, 1e-4, prior));
  }

  /** Variance of the mean film over the panel, square metres. */
  static double ofMeanFilm(SprayedPanel panel, PassPlan plan, List<FilmAt> readings) {
    return new PanelBound(panel, plan, readings).variance();
  }

  private double variance() {
    int n = nudges.size();
    RealMatrix information = new Array2DRowRealMatrix(n, n);
    RealMatrix slopes = new Array2DRowRealMatrix(readings.size(), n);
    RealVector ofMean = new ArrayRealVector(n);
    for (int j = 0; j < n; j++) {
      double[] slope = slope(nudges.get(j));
      ofMean.setEntry(j, slope[readings.size()]);
      for (int i = 0; i < readings.size(); i++) {
        slopes.setEntry(i, j, slope[i] / readings.get(i).uncertainty());
      }
      information.setEntry(j, j, nudges.get(j).prior);
    }
    information = information.add(slopes.transposeMultiply(slopes));
    return ofMean.dotProduct(new LUDecomposition(information).getSolver().solve(ofMean));
  }

  /** Of the film at each reading, then of the mean film. */
  private double[] slope(Nudge nudge) {
    nudge.by.accept(nudge.step);
    double[] more = film();
    nudge.by.accept(-2 * nudge.step);
    double[] less = film();
    nudge.by.accept(nudge.step);
    double[] slope = new double[more.length];
    for (int i = 0; i < slope.length; i++) {
      slope[i] = (more[i] - less[i]) / (2 * nudge.step);
    }
    return slope;
  }

  private double[] film() {
    return Stream.concat(
            readings.stream().map(r -> panel.truth(r.x(), r.y())), Stream.of(panel.mean()))
        .mapToDouble(film -> film)
        .toArray();
  }
}
