package lapline.trade.stroke;

import java.util.List;
import java.util.Random;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * A panel of 108 places under two coats of an arcing hand, for the benchmarks: all that is read
 * from it; one fit of its passes and its arc; and the same fit by a general-purpose optimiser
 * (Levenberg–Marquardt of Hipparchus 4.0.3) with slopes taken by differences.
 */
public final class TimedReading {
  private static final int PLACES = 108;
  private static final double STEP = 1e-6;

  private final PassPlan plan;
  private final List<FilmAt> readings;
  private final double level;
  private final StrokeModel model;
  private final HandScatter scatter;

  public TimedReading() {
    Random chance = new Random(5);
    SprayedPanel panel = new SprayedPanel();
    panel.wrist = 0.5;
    this.plan = panel.spray(chance);
    this.readings = panel.read(PLACES, chance);
    this.level = Math.log(readings.stream().mapToDouble(FilmAt::film).average().orElseThrow());
    this.model = new StrokeModel(plan, List.of(new Departure.Arc()));
    this.scatter = HandScatter.about(model, start(), readings);
  }

  private double[] start() {
    double[] start = new double[model.parameters()];
    start[StrokeModel.LEVEL] = level;
    return start;
  }

  public int passes() {
    return plan.passes();
  }

  /** All faults against each other, with intervals. */
  public void all() {
    if (StrokeReading.of(plan, readings).faults().isEmpty()) {
      throw new IllegalStateException("an arc is to be found");
    }
  }

  /** The objective that one fit ends at. */
  public double oneFit() {
    StrokeFit fit = StrokeFit.of(model, readings, scatter, start(), level);
    return fit.objectiveAt(fit.parameters());
  }

  /** The objective that the general-purpose optimiser ends at. */
  public double generalFit() {
    StrokeFit goal = StrokeFit.at(model, readings, scatter, start(), level);
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(start())
            .target(new double[PLACES + model.parameters()])
            .model(goal::residualsAt, p -> slopes(goal, p))
            .maxEvaluations(500)
            .maxIterations(500)
            .build();
    return goal.objectiveAt(
        new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray());
  }

  private static double[][] slopes(StrokeFit goal, double[] p) {
    double[] here = goal.residualsAt(p);
    double[][] rows = new double[here.length][p.length];
    for (int j = 0; j < p.length; j++) {
      double[] moved = p.clone();
      moved[j] += STEP;
      double[] there = goal.residualsAt(moved);
      for (int i = 0; i < here.length; i++) {
        rows[i][j] = (there[i] - here[i]) / STEP;
      }
    }
    return rows;
  }
}
