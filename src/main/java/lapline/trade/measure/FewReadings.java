package lapline.trade.measure;

/**
 * How many degrees of freedom two parts of one value have together where one of them rests on few
 * readings: a mean's own scatter and its instrument, or two means that are taken from each other.
 *
 * <p>The formula of Welch and Satterthwaite, 1/ν = Σ pᵢ²/νᵢ with pᵢ the part's share of the
 * variance, takes the scatter that was seen for the true one. Of so few readings it is often far
 * too small by chance, and just then the formula finds most degrees of freedom; where two such
 * parts are alike it finds too few. So pᵢ² gives way to a share that is drawn towards 0 and 1, the
 * more weakly the more the other part's scatter is known, in such a way that the interval holds the
 * truth nearly equally often whatever the true scatters are (the condition of Welch, Biometrika 34,
 * 1947, met numerically as by Trickett and Welch, Biometrika 41, 1954; from memory). The numbers
 * for each count were fitted here by integration over the scatters that may be seen: at 95.45 %
 * stated, 94.2 to 96 % where both parts have two degrees of freedom or more.
 *
 * <p>Two readings have one degree of freedom. For a part that rests on them no rule does that and
 * makes sense: all that were found to hold 94 to 96 % go up and down with the ratio of the scatters
 * seen, 14, 34, 5, 25, 8, 27, 12, 2 times u from one seen scatter of nought to two alike, and where
 * the two look alike hold 82 %. Whoever also wants 95.45 % if the scatters truly are as they look,
 * thus no more degrees of freedom than both parts have together, and nowhere less than 94.4 %, has
 * to put up with 97.7 % somewhere where both parts are two readings, with 97.2, 97.0 and 96.9 %
 * where the other is three, four and five, with 96.7 % where it is twelve (least possible, searched
 * by linear programs over all such rules, jumps and all). The rule here comes to 98.1, 97.7, 97.4,
 * 97.2 and 96.8 % without a jump, so what it states is at least 95 %; by the formula of Welch and
 * Satterthwaite it was 88 % and more.
 */
final class FewReadings {
  /** From so many degrees of freedom on the formula's own share is taken. */
  private static final int ENOUGH = 5;

  private static final double[] POWER = {6, 3.86, 2.77, 2.68};
  private static final double[] WEIGHT = {0, 0.12, 0.73, 0.81};
  private static final double[] WEIGHT_OF_OTHER = {0, 1.7, 1.79, 1.5};

  /** The share of a part of two readings that counts half, and what the other's scatter adds. */
  private static final double HALF = 0.155;

  private static final double HALF_OF_OTHER = 0.68;

  private FewReadings() {}

  /** A value whose uncertainty is that of two independent parts, in its own unit. */
  static Estimate joined(double value, Estimate one, Estimate other) {
    double u = Math.hypot(one.standardUncertainty(), other.standardUncertainty());
    if (u == 0) {
      return Estimate.of(value, 0);
    }
    double perFreedom = perFreedom(one, other, u) + perFreedom(other, one, u);
    double fewest = Math.min(one.degreesOfFreedom(), other.degreesOfFreedom());
    double freedom = 1 / Math.max(perFreedom, perTogether(one, other));
    return new Estimate(value, u, Math.max(fewest, freedom));
  }

  /** With a part of two readings: no more degrees of freedom than both have together. */
  private static double perTogether(Estimate one, Estimate other) {
    double fewest = Math.min(one.degreesOfFreedom(), other.degreesOfFreedom());
    double asTwo = Math.max(0, Math.min(1, 2 - fewest));
    return asTwo / (one.degreesOfFreedom() + other.degreesOfFreedom());
  }

  /** What a part adds to 1/ν; parts that do not count the readings fully lie between two counts. */
  private static double perFreedom(Estimate part, Estimate other, double u) {
    double share = square(part.standardUncertainty() / u);
    double freedom = part.degreesOfFreedom();
    double counted = Math.max(1, Math.min(ENOUGH, freedom));
    int few = (int) counted;
    double perOther = 1 / other.degreesOfFreedom();
    double drawn = drawn(few, share, perOther);
    double next = counted == few ? drawn : drawn(few + 1, share, perOther);
    return (drawn + (counted - few) * (next - drawn)) / freedom;
  }

  private static double drawn(int freedom, double share, double perOther) {
    if (freedom >= ENOUGH) {
      return square(share);
    }
    int at = freedom - 1;
    double power = Math.pow(share, POWER[at]);
    double weight =
        freedom == 1
            ? Math.pow(HALF + HALF_OF_OTHER * perOther, POWER[at])
            : WEIGHT[at] + WEIGHT_OF_OTHER[at] * perOther;
    return power / (power + weight * (1 - share));
  }

  private static double square(double x) {
    return x * x;
  }
}
