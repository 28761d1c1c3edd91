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
}
