package lapline.trade.measure;

/**
 * Mean and standard deviation of numbers, by the corrected two-pass algorithm (Chan, Golub &amp;
 * LeVeque, The American Statistician 37, 1983), which keeps its digits where a sum of squares loses
 * them.
 *
 * @param standardDeviation with divisor n − 1; 0 for a single number
 */
public record Summary(int count, double mean, double standardDeviation, double least, double most) {

  /**
   * @throws MeasureException when there are no numbers or one is not finite
   */
  public static Summary of(double... values) {
    if (values.length == 0) {
      throw new MeasureException("count", 0, "1 or more");
    }
    double least = values[0];
    double most = values[0];
    double shifted = 0;
    for (double v : values) {
      if (!Double.isFinite(v)) {
        throw new MeasureException("values", v, "finite numbers");
      }
      shifted += v - values[0];
      least = Math.min(least, v);
      most = Math.max(most, v);
    }
    double mean = values[0] + shifted / values.length;
    return new Summary(values.length, mean, deviation(values, mean), least, most);
  }

  private static double deviation(double[] values, double mean) {
    if (values.length == 1) {
      return 0;
    }
    double squares = 0;
    double rest = 0;
    for (double v : values) {
      double d = v - mean;
      squares += d * d;
      rest += d;
    }
    double variance = (squares - rest * rest / values.length) / (values.length - 1);
    return Math.sqrt(Math.max(0, variance));
  }
}
