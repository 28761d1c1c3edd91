package lapline.practice.fit;

import java.util.Arrays;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import lapline.trade.measure.TargetRange;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Many films that the readings leave possible, each as likely as the next: drawn from the posterior
 * of the kriging, over all its covariances by their weight. What share of the panel lies inside a
 * range, and how sure that is, is read from them.
 */
final class FilmDraws {
  private static final int DRAWS = 500;

  /** Covariances with less weight than this are left out. */
  private static final double LEAST_WEIGHT = 0.02;

  private final double[][] films;

  /**
   * @param grid the points that stand for the panel's area
   */
  FilmDraws(FilmFits film, PanelGrid grid) {
    Kriging[] fits = film.all();
    double[] weights = film.weights();
    // a fixed seed: the same readings must give the same score
    RandomGenerator chance = new Random(20_240_229L);
    double[] x = Arrays.stream(grid.onPanel).mapToDouble(i -> grid.x[i]).toArray();
    double[] y = Arrays.stream(grid.onPanel).mapToDouble(i -> grid.y[i]).toArray();
    double[][] drawn = new double[DRAWS][];
    double least = least(weights);
    double sum = Arrays.stream(weights).filter(w -> w >= least).sum();
    double until = 0;
    int done = 0;
    for (int f = 0; f < fits.length; f++) {
      if (weights[f] >= least) {
        until += weights[f] / sum * DRAWS;
        int next = Math.min(DRAWS, (int) Math.round(until));
        draw(fits[f], x, y, drawn, done, next, chance);
        done = next;
      }
    }
    this.films = Arrays.copyOf(drawn, done);
  }

  /** Few readings leave many fits about as likely as each other, and none with much weight. */
  private static double least(double[] weights) {
    return Math.min(LEAST_WEIGHT, Arrays.stream(weights).max().orElse(0) / 2);
  }

  private static void draw(
      Kriging fit,
      double[] x,
      double[] y,
      double[][] into,
      int from,
      int to,
      RandomGenerator chance) {
    if (from == to) {
      return;
    }
    double[][] root = root(fit.posterior(x, y));
    double[] best = new double[x.length];
    Arrays.setAll(best, i -> fit.filmAt(x[i], y[i]));
    for (int d = from; d < to; d++) {
      into[d] = drawn(best, root, chance);
    }
  }

  private static double[] drawn(double[] best, double[][] root, RandomGenerator chance) {
    double[] steps = new double[best.length];
    Arrays.setAll(steps, i -> chance.nextGaussian());
    double[] film = best.clone();
    for (int i = 0; i < film.length; i++) {
      for (int j = 0; j <= i; j++) {
        film[i] += root[i][j] * steps[j];
      }
    }
    return film;
  }

  /** A lower triangle whose product with its transpose is the covariance, up to rounding. */
  private static double[][] root(RealMatrix covariance) {
    double trace = covariance.getTrace() / covariance.getRowDimension();
    for (int i = 0; i < covariance.getRowDimension(); i++) {
      covariance.addToEntry(i, i, 1e-7 * trace + 1e-18);
    }
    return new CholeskyDecomposition(covariance, 1e-4, 0).getL().getData();
  }

  /** Shares of the area inside a range, one for each film, rising. */
  double[] sharesInside(TargetRange range) {
    return Arrays.stream(films)
        .mapToDouble(
            film -> Arrays.stream(film).filter(range::contains).count() / (double) film.length)
        .sorted()
        .toArray();
  }

  /** Mean over the films of their mean over the panel. */
  double mean() {
    return average(film -> Arrays.stream(film).average().orElseThrow());
  }

  /** Mean over the films of their standard deviation over the panel. */
  double spread() {
    return average(
        film -> {
          double mean = Arrays.stream(film).average().orElseThrow();
          return Math.sqrt(
              Arrays.stream(film).map(f -> (f - mean) * (f - mean)).average().orElseThrow());
        });
  }

  private double average(ToDoubleFunction<double[]> of) {
    return Arrays.stream(films).mapToDouble(of).average().orElseThrow();
  }
}
