package lapline.practice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/**
 * Source: Hipparchus 4.0.3, OLSMultipleLinearRegression (QR) and GLSMultipleLinearRegression.
 * Conditions: 24 readings, 4 columns, seeded. Tolerance: 1e-9 relative, for double arithmetic.
 */
class FilmRegressionReferenceTest {
  private static final int N = 24;
  private final Random chance = new Random(7);
  private final double[][] columns = {new double[N], new double[N], new double[N], new double[N]};
  private final double[] values = new double[N];

  FilmRegressionReferenceTest() {
    for (int i = 0; i < N; i++) {
      columns[0][i] = 1;
      for (int j = 1; j < columns.length; j++) {
        columns[j][i] = chance.nextDouble() + 10 * j;
      }
      values[i] = 50 + 3 * columns[1][i] - columns[3][i] + chance.nextGaussian();
    }
  }

  @Test
  void agrees_with_ordinary_least_squares() {
    OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
    reference.setNoIntercept(true);
    reference.newSampleData(values, rows());
    FilmRegression fit = FilmRegression.of(values).with(columns);

    assertThat(fit.chiSquared())
        .isCloseTo(reference.calculateResidualSumOfSquares(), within(1e-9 * fit.chiSquared()));
    double[] expected = reference.estimateRegressionParameters();
    double[] errors = reference.estimateRegressionParametersStandardErrors();
    for (int j = 0; j < columns.length; j++) {
      assertThat(fit.coefficients()[j])
          .isCloseTo(expected[j], within(1e-9 * Math.abs(expected[j])));
      double[] one = new double[columns.length];
      one[j] = 1;
      double stated = errors[j] / reference.estimateRegressionStandardError();
      double birge = Math.max(1, reference.estimateRegressionStandardError());
      assertThat(fit.uncertaintyOf(one)).isCloseTo(stated * birge, within(1e-9 * errors[j]));
    }
  }

  @Test
  void whitened_by_a_steady_hand_it_agrees_with_generalised_least_squares() {
    PlacedFilm film =
        PlacedFilm.on(
            Panels.outline(6, 4),
            BuildByPlace.dryByPlace(
                Panels.entry(Panels.sprayed(Hand.steady(0.07, 0.4)), Panels.outline(6, 4), 1L)));
    // in µm, since the reference takes squared metres for 0
    double[] micrometres = new double[N];
    double[][] covariance = new double[N][N];
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double apart = (film.y[i] - film.y[j]) / (0.25 * Panels.FAN);
        covariance[i][j] = Math.pow(0.02e6 * film.mean, 2) * Math.exp(-apart * apart / 2);
      }
      covariance[i][i] += Math.pow(1e6 * film.uncertainty[i], 2);
      micrometres[i] = 1e6 * film.film[i];
    }
    GLSMultipleLinearRegression reference = new GLSMultipleLinearRegression();
    reference.setNoIntercept(true);
    reference.newSampleData(micrometres, rows(), covariance);

    SteadyHand hand = new SteadyHand(film, Panels.FAN);
    double[] white = hand.whitened(new double[][] {film.film})[0];
    FilmRegression fit = FilmRegression.of(white).with(hand.whitened(columns));

    double[] expected = reference.estimateRegressionParameters();
    for (int j = 0; j < columns.length; j++) {
      assertThat(1e6 * fit.coefficients()[j])
          .isCloseTo(expected[j], within(1e-7 * Math.abs(expected[j])));
    }
    RealMatrix inverse = MatrixUtils.inverse(new Array2DRowRealMatrix(covariance));
    double[] residual = reference.estimateResiduals();
    double chiSquared =
        new ArrayRealVector(residual).dotProduct(inverse.operate(new ArrayRealVector(residual)));
    assertThat(fit.chiSquared()).isCloseTo(chiSquared, within(1e-7 * chiSquared));
  }

  @Test
  void a_column_that_is_already_in_is_not_seen() {
    FilmRegression fit = FilmRegression.of(values).with(columns);
    double[] sum = new double[N];
    for (int i = 0; i < N; i++) {
      sum[i] = columns[1][i] + columns[2][i];
    }
    assertThat(fit.with(sum)).isNull();
  }

  private double[][] rows() {
    double[][] rows = new double[N][columns.length];
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < columns.length; j++) {
        rows[i][j] = columns[j][i];
      }
    }
    return rows;
  }
}
