package lapline.trade.measure;

/**
 * How many degrees of freedom the mean of two to four readings has, when the instrument's known
 * uncertainty is joined to their own scatter.
 *
 * <p>The formula of Welch and Satterthwaite takes the scatter that was seen for the true one. Of so
 * few readings it is often far too small by chance, and just then the formula finds most degrees of
 * freedom. So they are drawn from infinite down to those of the readings, by the scatter's share of
 * the variance, in such a way that the interval holds the truth nearly equally often whatever the
 * true scatter is (the condition of Welch, Biometrika 34, 1947, met numerically as by Trickett and
 * Welch, Biometrika 41, 1954; from memory). The two numbers for each count of readings were fitted
 * here by integration over the scatter that may be seen: at 95.45 % stated, 94.5 to 96.5 % of two
 * readings, 94.5 to 95.5 % of three and four.
 */
final class FewReadings {
  /** From here on the formula's intervals hold 94 to 96 %. */
  static final int ENOUGH = 5;

  private static final double[] POWER = {5.7, 3.0, 2.8};
  private static final double[] WEIGHT = {3e-5, 0.26, 0.73};

  private FewReadings() {}

  /**
   * @param readings 2 to 4
   * @param share of the variance that the readings' own scatter makes, 0 to 1
   * @return readings − 1 to infinite
   */
  static double degreesOfFreedom(int readings, double share) {
    double power = Math.pow(share, POWER[readings - 2]);
    double drawn = power / (power + WEIGHT[readings - 2] * (1 - share));
    return (readings - 1) / drawn;
  }
}
