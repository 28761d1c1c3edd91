package lapline.trade.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function from 0 to some end, as a polynomial that meets it at the places of a Chebyshev
 * polynomial, where it strays least between them.
 */
final class Polynomial {
  /** That of the highest power last. */
  private final double[] coefficients;

  /**
   * @param terms 1 more than a multiple of 6
   */
  Polynomial(DoubleUnaryOperator function, double end, int terms) {
    double perHalf = 2 / end;
    double[] series = series(u -> function.applyAsDouble((u + 1) / perHalf), terms);
    coefficients = powers(series, perHalf);
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

  /**
   * The same in powers, by T(j + 1) = 2 u T(j) − T(j − 1), u from −1 to 1 on the way to the end.
   */
  private static double[] powers(double[] series, double perHalf) {
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
        next[power] = (j == 0 ? 1 : 2) * (perHalf * raised - now[power]) - before[power];
      }
      before = now;
      now = next;
    }
    return sum;
  }

  double at(double x) {
    double sum = 0;
    for (int k = coefficients.length - 1; k >= 0; k--) {
      sum = sum * x + coefficients[k];
    }
    return sum;
  }

  /**
   * The sums at many places, six powers in each pass over them.
   *
   * @param x the places
   * @param sums where the sums go
   */
  List<Pass> passes(double[] x, double[] sums) {
    int last = coefficients.length - 1;
    double highest = coefficients[last];
    Six first = Six.from(coefficients, last - 6);
    List<Pass> all = new ArrayList<>();
    all.add(n -> first.begin(highest, x, sums, n));
    for (int k = last - 12; k >= 0; k -= 6) {
      Six next = Six.from(coefficients, k);
      all.add(n -> next.goOn(x, sums, n));
    }
    return all;
  }

  /**
   * Coefficients of six powers. They stand in fields, for a coefficient in an array might change
   * with every sum that is put into one, for all that the compiler knows.
   */
  private record Six(double a, double b, double c, double d, double e, double f) {
    static Six from(double[] all, int k) {
      return new Six(all[k], all[k + 1], all[k + 2], all[k + 3], all[k + 4], all[k + 5]);
    }

    private double on(double sum, double x) {
      return (((((sum * x + f) * x + e) * x + d) * x + c) * x + b) * x + a;
    }

    void begin(double highest, double[] x, double[] sums, int n) {
      for (int i = 0; i < n; i++) {
        sums[i] = on(highest, x[i]);
      }
    }

    void goOn(double[] x, double[] sums, int n) {
      for (int i = 0; i < n; i++) {
        sums[i] = on(sums[i], x[i]);
      }
    }
  }
}
