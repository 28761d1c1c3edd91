package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * What somebody could know of a panel who has the simulator's own equations: film, fan, shape, and
 * the place and amount of every pass, the likeliest by the readings and by what was written down,
 * sought from there (Levenberg–Marquardt of Hipparchus 4.0.3).
 */
final class LikeliestPanel {
  private static final double SMALL = 1e-3;
  private static final double SETTLED = 1e-6;
  private static final int MOST = 2000;

  /** ln of the film, then in standard deviations of the record: fan, shape, two for each pass. */
  private static final int FIRST_PASS = 3;

  private final PassPlan plan;
  private final List<FilmAt> readings;
  private final double film;
  private final int parameters;

  private LikeliestPanel(PassPlan plan, List<FilmAt> readings) {
    this.plan = plan;
    this.readings = readings;
    this.film = readings.stream().mapToDouble(FilmAt::film).average().orElseThrow();
    this.parameters = FIRST_PASS + 2 * plan.passes();
  }

  static double overlap(PassPlan plan, List<FilmAt> readings) {
    LikeliestPanel search = new LikeliestPanel(plan, readings);
    SprayedPanel likeliest = search.panel(search.likeliest());
    double step = 0;
    int first = 0;
    for (PassPlan.Coat coat : plan.coats()) {
      int[] over = coat.over(plan.height());
      double way =
          likeliest.passes.get(first + over[1])[0] - likeliest.passes.get(first + over[0])[0];
      step += way / (over[1] - over[0]) / plan.coats().size();
      first += coat.centrelines().size();
    }
    return 1 - step / likeliest.fan;
  }

  private double[] likeliest() {
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(new double[parameters])
            .target(new double[readings.size() + parameters - 1])
            .model(p -> new Pair<>(residuals(p.toArray()), slopes(p.toArray())))
            .lazyEvaluation(false)
            .maxEvaluations(MOST)
            .maxIterations(MOST)
            .build();
    // the rim of the fan is a corner, at which the last digits never settle
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(SETTLED)
        .withParameterRelativeTolerance(SETTLED)
        .optimize(problem)
        .getPoint()
        .toArray();
  }

  private SprayedPanel panel(double[] p) {
    SprayedPanel panel = new SprayedPanel();
    panel.film = film * Math.exp(p[0]);
    panel.fan = plan.fanWidth().value() + p[1] * plan.fanWidth().standardUncertainty();
    panel.beta = plan.beta().value() + p[2] * plan.beta().standardUncertainty();
    int next = FIRST_PASS;
    for (PassPlan.Coat coat : plan.coats()) {
      double off = 0;
      for (int k = 0; k < coat.centrelines().size(); k++) {
        off += (k == 0 ? SprayedPanel.FIRST_READ : SprayedPanel.STEP_READ) * p[next++];
        double amount = 1 + panel.speedJitter * p[next++];
        panel.passes.add(new double[] {coat.centrelines().get(k) + off, amount});
      }
    }
    return panel;
  }

  private RealVector residuals(double[] p) {
    SprayedPanel panel = panel(p);
    List<Double> all = new ArrayList<>();
    for (FilmAt r : readings) {
      all.add((panel.truth(r.x(), r.y()) - r.film()) / r.uncertainty());
    }
    IntStream.range(1, parameters).forEach(j -> all.add(p[j]));
    return new ArrayRealVector(all.stream().mapToDouble(d -> d).toArray());
  }

  private RealMatrix slopes(double[] p) {
    RealMatrix slopes = new Array2DRowRealMatrix(readings.size() + parameters - 1, parameters);
    for (int j = 0; j < parameters; j++) {
      double[] more = p.clone();
      double[] less = p.clone();
      more[j] += SMALL;
      less[j] -= SMALL;
      RealVector slope = residuals(more).subtract(residuals(less)).mapDivide(2 * SMALL);
      slopes.setColumnVector(j, slope);
    }
    return slopes;
  }
}
