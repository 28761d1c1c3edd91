package lapline.trade.stroke;

/**
 * One fault in its best form, for a panel and beside the faults that are in already.
 *
 * @param evidence ln of how much better the readings are foretold with it than without
 */
record Claim(Fault fault, Departure departure, double value, double evidence) {

  Claim with(double otherEvidence) {
    return new Claim(fault, departure, value, otherEvidence);
  }
}
