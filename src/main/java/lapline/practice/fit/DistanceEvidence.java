package lapline.practice.fit;

/**
 * What the measured gun distances say about the causes: an arc takes the gun away from the panel at
 * both ends, the others do not. Says nothing where no distance was measured.
 */
record DistanceEvidence(Technique technique, double meanFilm) {

  /** Misfit of the distances with a cause, as a −2 ln L; 0 where they agree. */
  double against(Cause cause, double amount) {
    return cause == Cause.ARCING ? misfit(bowOfArc(amount)) : misfit(0);
  }

  double againstChance() {
    return misfit(0);
  }

  /** Film falls as cos³ of the angle, distance grows as 1/cos. */
  private double bowOfArc(double filmLost) {
    double left = Math.max(0.1, 1 - filmLost / meanFilm);
    return Math.pow(left, -1 / 3.0) - 1;
  }

  private double misfit(double expectedBow) {
    if (!technique.bowKnown()) {
      return 0;
    }
    double off = (technique.bow() - expectedBow) / technique.bowUncertainty();
    return off * off;
  }
}
