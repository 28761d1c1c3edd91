package lapline.judgement.agreement;

import java.util.Arrays;
import java.util.Optional;

/**
 * How far two who put the same things into the same classes agree beyond what chance would bring,
 * without weights.
 *
 * <p>Cohen, Educational and Psychological Measurement 20, 1960: κ = (po − pe) / (1 − pe). Its
 * standard error for many cases is that of Fleiss, Cohen &amp; Everitt, Psychological Bulletin 72,
 * 1969 (formula from memory; the check value is not). Exact but for rounding, about 1e-12; the
 * interval is an approximation for many cases and rough below some thirty.
 *
 * @param cases how many things were put into classes, 1 or more
 * @param observed po: share of them in which both agree, 0 to 1
 * @param expected pe: share in which they would by chance, 0 to less than 1
 * @param kappa −1 to 1: 1 is full agreement, 0 no more than by chance
 * @param standardError of kappa, 0 or more
 */
public record CohensKappa(
    long cases, double observed, double expected, double kappa, double standardError) {

  /** The normal distribution's two-sided 95 % point. */
  private static final double TWO_SIDED_95 = 1.959963984540054;

  /** What is left of 1 − pe by rounding where everything lies in one class. */
  private static final double ROUNDING = 1e-12;

  /**
   * From how often each pair of classes came together: a row for each class of the first, a column
   * for each of the second.
   *
   * @param counts a square of 2 by 2 or more, each 0 or more
   * @return empty where there are no cases, or where both put all into one class, so that chance
   *     alone would agree as well
   * @throws IllegalArgumentException when it is no square, or a count is below 0
   */
  public static Optional<CohensKappa> of(long[][] counts) {
    check(counts);
    long cases = Arrays.stream(counts).flatMapToLong(Arrays::stream).sum();
    if (cases == 0) {
      return Optional.empty();
    }
    double[][] shares =
        Arrays.stream(counts)
            .map(row -> Arrays.stream(row).mapToDouble(n -> (double) n / cases).toArray())
            .toArray(double[][]::new);
    return of(shares, cases);
  }

  private static Optional<CohensKappa> of(double[][] p, long cases) {
    double[] rows = new double[p.length];
    double[] columns = new double[p.length];
    double observed = 0;
    for (int i = 0; i < p.length; i++) {
      observed += p[i][i];
      for (int j = 0; j < p.length; j++) {
        rows[i] += p[i][j];
        columns[j] += p[i][j];
      }
    }
    double expected = 0;
    for (int i = 0; i < p.length; i++) {
      expected += rows[i] * columns[i];
    }
    if (1 - expected <= ROUNDING) {
      return Optional.empty();
    }
    double kappa = (observed - expected) / (1 - expected);
    double error = Math.sqrt(Math.max(0, variance(p, rows, columns, kappa, expected)) / cases);
    return Optional.of(new CohensKappa(cases, observed, expected, kappa, error));
  }

  /** Fleiss, Cohen &amp; Everitt 1969, their three sums in turn, without the division by n. */
  private static double variance(
      double[][] p, double[] rows, double[] columns, double kappa, double expected) {
    double agreeing = 0;
    double differing = 0;
    for (int i = 0; i < p.length; i++) {
      for (int j = 0; j < p.length; j++) {
        if (i == j) {
          agreeing += p[i][i] * square(1 - (rows[i] + columns[i]) * (1 - kappa));
        } else {
          differing += p[i][j] * square(columns[i] + rows[j]);
        }
      }
    }
    double common = square(kappa - expected * (1 - kappa));
    return (agreeing + square(1 - kappa) * differing - common) / square(1 - expected);
  }

  private static double square(double x) {
    return x * x;
  }

  /** The lower end of the 95 % interval, never below −1. */
  public double least() {
    return Math.max(-1, kappa - TWO_SIDED_95 * standardError);
  }

  /** The upper end of the 95 % interval, never above 1. */
  public double most() {
    return Math.min(1, kappa + TWO_SIDED_95 * standardError);
  }

  private static void check(long[][] counts) {
    if (counts.length < 2 || Arrays.stream(counts).anyMatch(row -> row.length != counts.length)) {
      throw new IllegalArgumentException(
          "counts has "
              + counts.length
              + " rows of "
              + Arrays.stream(counts).map(row -> row.length).toList()
              + "; it must be a square of 2 by 2 or more");
    }
    for (long[] row : counts) {
      for (long count : row) {
        if (count < 0) {
          throw new IllegalArgumentException("counts has " + count + "; each must be 0 or more");
        }
      }
    }
  }
}
