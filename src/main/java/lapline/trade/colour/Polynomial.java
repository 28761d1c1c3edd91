package lapline.trade.colour;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function from 0 to some end, as a polynomial that meets it at the places of a Chebyshev
 * polynomial, where it strays least between them.
 */
final class Polynomial {
  /** Over −1 to 1, that of the highest power last. */
  private final double[] coefficients;

  private final double perHalf;

  /**
   * @param terms an even number
   */
  Polynomial(DoubleUnaryOperator function, double end, int terms) {
    perHalf = 2 / end;
    double[] series = series(u -> function.applyAsDouble((u + 1) / perHalf), terms);
    coefficients = powers(series);
  }

  /** Sum of Chebyshev polynomials that meets a function at as many places. */
  private static double[] series(DoubleUnaryOperator function, int terms) {
    double[] series = new double[terms];
    for (int place = 0; place < terms; place++) {
      double angle = Math.PI * (place + 0.5) / terms;
      double value = function.applyAsDouble(Math.cos(angle)) / terms;
      series[0] += value;
      for (int j = 1; j < terms; j++) {
        series[j] += 2 * value * Math.cos(j * angle);
      }
    }
    return series;
  }

  /** The same in powers, by T(j + 1) = 2 u T(j) − T(j − 1). */
  private static double[] powers(double[] series) {
    int terms = series.length;
    double[] sum = new double[terms];
    double[] before = new double[terms];
    double[] now = new double[terms];
    now[0] = 1;
    for (int j = 0; j < terms; j++) {
      double[] next = new double[terms];
      for (int power = 0; power < terms; power++) {
        sum[power] += series[j] * now[power];
        double raised = power == 0 ? 0 : now[power - 1];
        next[power] = (j == 0 ? 1 : 2) * raised - before[power];
      }
      before = now;
      now = next;
    }
    return sum;
  }

  double at(double x) {
    double u = x * perHalf - 1;
    double sum = 0;
    for (int k = coefficients.length - 1; k >= 0; k--) {
      sum = sum * u + coefficients[k];
    }
    return sum;
  }

  /**
   * At many places, two powers in each pass over them, so that a processor takes several at once.
   *
   * @param x what it stands at, which is overwritten
   */
  void at(double[] x, double[] sums, int n) {
    overHalf(x, perHalf, n);
    int last = coefficients.length - 1;
    firstPower(coefficients[last], coefficients[last - 1], x, sums, n);
    for (int k = last - 2; k > 0; k -= 2) {
      twoPowers(coefficients[k], coefficients[k - 1], x, sums, n);
    }
  }

  private static void overHalf(double[] x, double perHalf, int n) {
    for (int i = 0; i < n; i++) {
      x[i] = x[i] * perHalf - 1;
    }
  }

  private static void firstPower(double odd, double even, double[] u, double[] sums, int n) {
    for (int i = 0; i < n; i++) {
      sums[i] = odd * u[i] + even;
    }
  }

  private static void twoPowers(double odd, double even, double[] u, double[] sums, int n) {
    for (int i = 0; i < n; i++) {
      sums[i] = (sums[i] * u[i] + odd) * u[i] + even;
    }
  }
}
