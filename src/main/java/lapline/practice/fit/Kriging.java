package lapline.practice.fit;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Gaussian-process regression of the film on its places for one covariance, with each reading's own
 * uncertainty as noise and an unknown mean (ordinary kriging; Rasmussen and Williams 2006, §2.7
 * with a constant as the only basis function and a vague prior on it).
 */
final class Kriging {
  /** Pivots are films squared, far below what the library takes for 0 unless told. */
  private static final double SQUARE_METRES = 1e-24;

  private final PlacedFilm film;
  private final FilmCovariance covariance;
  private final DecompositionSolver solver;
  private final RealVector ones;
  private final RealVector solvedOnes;
  private final RealVector weights;
  private final double precisionOfMean;
  private final double mean;
  private final double logLikelihood;

  Kriging(PlacedFilm film, FilmCovariance covariance) {
    this.film = film;
    this.covariance = covariance;
    CholeskyDecomposition cholesky = new CholeskyDecomposition(ofReadings(), 1e-9, SQUARE_METRES);
    this.solver = cholesky.getSolver();
    this.ones = new ArrayRealVector(film.size(), 1);
    RealVector values = new ArrayRealVector(film.film, false);
    this.solvedOnes = solver.solve(ones);
    this.precisionOfMean = ones.dotProduct(solvedOnes);
    this.mean = solvedOnes.dotProduct(values) / precisionOfMean;
    RealVector rest = values.mapSubtract(mean);
    this.weights = solver.solve(rest);
    this.logLikelihood =
        -0.5
            * (rest.dotProduct(weights)
                + logDeterminant(cholesky.getL())
                + Math.log(precisionOfMean));
  }

  private RealMatrix ofReadings() {
    double[][] k = new double[film.size()][film.size()];
    for (int i = 0; i < k.length; i++) {
      for (int j = 0; j <= i; j++) {
        k[i][j] = covariance.between(film.x[i], film.y[i], film.x[j], film.y[j]);
        k[j][i] = k[i][j];
      }
      k[i][i] += film.uncertainty[i] * film.uncertainty[i];
    }
    return new Array2DRowRealMatrix(k, false);
  }

  private static double logDeterminant(RealMatrix lower) {
    double sum = 0;
    for (int i = 0; i < lower.getRowDimension(); i++) {
      sum += 2 * Math.log(lower.getEntry(i, i));
    }
    return sum;
  }

  /** Log of the probability of the readings, the mean integrated out, up to a constant. */
  double logLikelihood() {
    return logLikelihood;
  }

  /** Best film at a point, metres. */
  double filmAt(double x, double y) {
    double film = mean;
    for (int i = 0; i < this.film.size(); i++) {
      film += weights.getEntry(i) * covariance.between(x, y, this.film.x[i], this.film.y[i]);
    }
    return film;
  }

  /** Covariance of what is not known about the film at some points, m². */
  RealMatrix posterior(double[] x, double[] y) {
    int m = x.length;
    double[][] cross = new double[film.size()][m];
    double[][] prior = new double[m][m];
    for (int j = 0; j < m; j++) {
      for (int i = 0; i < film.size(); i++) {
        cross[i][j] = covariance.between(film.x[i], film.y[i], x[j], y[j]);
      }
      for (int i = 0; i <= j; i++) {
        prior[i][j] = covariance.between(x[i], y[i], x[j], y[j]);
        prior[j][i] = prior[i][j];
      }
    }
    RealMatrix across = new Array2DRowRealMatrix(cross, false);
    RealMatrix known = across.transposeMultiply(solver.solve(across));
    RealVector unknownMean = across.transpose().operate(solvedOnes).mapMultiply(-1).mapAdd(1);
    RealMatrix ofMean = unknownMean.outerProduct(unknownMean).scalarMultiply(1 / precisionOfMean);
    return new Array2DRowRealMatrix(prior, false).subtract(known).add(ofMean);
  }
}
