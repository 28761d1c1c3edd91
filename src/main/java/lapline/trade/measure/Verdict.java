package lapline.trade.measure;

/** The answer to 'does the true value lie in the range?', read from its conformance probability. */
public enum Verdict {
  MET,
  DOUBTFUL,
  MISSED;

  /** At or above this probability a criterion is met; at or below its complement it is missed. */
  public static final double SURE = 0.95;

  /**
   * @param conformance probability that the true value conforms, 0 to 1
   */
  public static Verdict of(double conformance) {
    Valid.between("conformance", conformance, 0, 1);
    return conformance >= SURE ? MET : conformance <= 1 - SURE ? MISSED : DOUBTFUL;
  }

  /**
   * The conformance probability in whole per cent, so that it reads as this verdict: of what is in
   * doubt never 95 or 5, which are sure, however near it comes.
   *
   * @param conformance probability of this verdict, 0 to 1
   */
  public int perCent(double conformance) {
    int nearest =
        Math.toIntExact(Math.round(100 * Valid.between("conformance", conformance, 0, 1)));
    int sure = Math.toIntExact(Math.round(100 * SURE));
    return this == DOUBTFUL ? Math.max(100 - sure + 1, Math.min(sure - 1, nearest)) : nearest;
  }
}
