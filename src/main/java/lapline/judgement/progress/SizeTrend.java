package lapline.judgement.progress;

import java.util.Arrays;
import java.util.Optional;

/**
 * Whether sizes that were measured one after the other go up or down: the median of the slopes
 * between all pairs, with the interval that goes with Kendall's rank correlation. A single odd size
 * hardly moves it, and it asks for no shape of the scatter; how unsure each size is it does not
 * ask.
 *
 * <p>Theil, Indagationes Mathematicae 12, 1950; Sen, Journal of the American Statistical
 * Association 63, 1968 (both from memory). The interval is exact where no two sizes are alike; of
 * alike ones it holds a little more.
 *
 * @param slope change of the size from one panel to the next, in the sizes' unit
 * @param least lower end of its interval
 * @param most upper end
 * @param held the probability with which the interval holds the true slope, {@value #COVERAGE} to 1
 * @param sizes how many sizes it was taken from
 */
public record SizeTrend(double slope, double least, double most, double held, int sizes) {
  /** What the interval holds at the least. */
  public static final double COVERAGE = 0.9;

  /** Of fewer sizes no order at all is so seldom that a trend could be told. */
  public static final int FEWEST = 4;

  /** What is left by rounding. */
  private static final double ROUNDING = 1e-12;

  /** What can be said. */
  public enum Told {
    SHRINKING,
    GROWING,
    /** The interval holds 0. */
    NEITHER
  }

  /**
   * @param at where each size stands, such as the number of its panel; each more than the one
   *     before
   * @param sizes of any unit, as many
   * @return empty of fewer than {@value #FEWEST} sizes
   * @throws IllegalArgumentException when they are not as many, not in order, or no numbers
   */
  public static Optional<SizeTrend> of(double[] at, double[] sizes) {
    check(at, sizes);
    if (sizes.length < FEWEST) {
      return Optional.empty();
    }
    double[] slopes = slopes(at, sizes);
    double[] orders = orders(sizes.length);
    int left = 0;
    double tail = orders[0];
    while (2 * (tail + orders[left + 1]) <= 1 - COVERAGE + ROUNDING) {
      left++;
      tail += orders[left];
    }
    int middle = slopes.length / 2;
    double slope =
        slopes.length % 2 == 1 ? slopes[middle] : (slopes[middle - 1] + slopes[middle]) / 2;
    return Optional.of(
        new SizeTrend(
            slope, slopes[left], slopes[slopes.length - 1 - left], 1 - 2 * tail, sizes.length));
  }

  private static double[] slopes(double[] at, double[] sizes) {
    double[] slopes = new double[sizes.length * (sizes.length - 1) / 2];
    int next = 0;
    for (int i = 0; i < sizes.length; i++) {
      for (int j = i + 1; j < sizes.length; j++) {
        slopes[next++] = (sizes[j] - sizes[i]) / (at[j] - at[i]);
      }
    }
    Arrays.sort(slopes);
    return slopes;
  }

  /**
   * How likely it is that so many pairs stand the wrong way round when all orders are as likely:
   * the null distribution of Kendall's K, one thing put in after the other.
   */
  private static double[] orders(int things) {
    double[] shares = {1};
    for (int n = 2; n <= things; n++) {
      double[] more = new double[n * (n - 1) / 2 + 1];
      for (int pairs = 0; pairs < more.length; pairs++) {
        for (int before = Math.max(0, pairs - n + 1); before <= pairs; before++) {
          more[pairs] += before < shares.length ? shares[before] / n : 0;
        }
      }
      shares = more;
    }
    return shares;
  }

  public Told told() {
    if (most < 0) {
      return Told.SHRINKING;
    }
    return least > 0 ? Told.GROWING : Told.NEITHER;
  }

  private static void check(double[] at, double[] sizes) {
    if (at.length != sizes.length) {
      throw new IllegalArgumentException(
          "at has "
              + at.length
              + " places; it must have one for each of "
              + sizes.length
              + " sizes");
    }
    for (int i = 0; i < at.length; i++) {
      if (!Double.isFinite(sizes[i])) {
        throw new IllegalArgumentException("sizes has " + sizes[i] + "; each must be a number");
      }
      boolean later = i == 0 || at[i] > at[i - 1];
      if (!later || !Double.isFinite(at[i])) {
        throw new IllegalArgumentException(
            "at has " + at[i] + "; each must be a number, and more than the one before");
      }
    }
  }
}
