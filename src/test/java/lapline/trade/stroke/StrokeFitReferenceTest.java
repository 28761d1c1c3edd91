package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;

/** The search and its linear algebra against the general-purpose library Hipparchus 4.0.3. */
class StrokeFitReferenceTest {

  @Test
  void triangles_are_those_of_the_library() {
    Random chance = new Random(3);
    double[][] root = new double[12][12];
    for (double[] row : root) {
      for (int j = 0; j < row.length; j++) {
        row[j] = chance.nextGaussian();
      }
    }
    Array2DRowRealMatrix r = new Array2DRowRealMatrix(root);
    double[][] a = r.multiply(r.transpose()).getData();
    CholeskyDecomposition theirs = new CholeskyDecomposition(new Array2DRowRealMatrix(a), 1e-9, 0);
    double[] v = chance.doubles(12).toArray();
    Triangle ours = Triangle.of(a);
    assertThat(ours.solve(v))
        .containsExactly(theirs.getSolver().solve(new ArrayRealVector(v)).toArray(), within(1e-6));
    assertThat(Math.exp(ours.logDeterminant()) / theirs.getDeterminant())
        .isCloseTo(1, within(1e-9));
  }

  /**
   * A search without slopes that begins where ours ended gains less than a tenth of a standard
   * deviation.
   */
  @Test
  void no_better_point_is_found_by_a_general_search() {
    for (int seed = 0; seed < 6; seed++) {
      Random chance = new Random(seed);
      SprayedPanel panel = new SprayedPanel();
      panel.wrist = 0.5;
      PassPlan plan = panel.spray(chance);
      List<FilmAt> readings = panel.read(24, chance);
      double level = Math.log(readings.stream().mapToDouble(FilmAt::film).average().orElseThrow());
      StrokeModel model = new StrokeModel(plan, List.of(new Departure.Arc()));
      double[] start = new double[model.parameters()];
      start[StrokeModel.LEVEL] = level;
      HandScatter scatter = HandScatter.about(model, start, readings);
      StrokeFit fit = StrokeFit.of(model, readings, scatter, start, level);
      double theirs =
          new SimplexOptimizer(1e-10, 1e-8)
              .optimize(
                  new MaxEval(20_000),
                  GoalType.MINIMIZE,
                  new ObjectiveFunction(fit::objectiveAt),
                  new InitialGuess(fit.parameters()),
                  new NelderMeadSimplex(fit.parameters().length, 0.01))
              .getValue();
      assertThat(fit.objectiveAt(fit.parameters())).isLessThanOrEqualTo(theirs + 0.1);
    }
  }
}
