package lapline.trade.spray;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * How much of the paint that arrives at one distance is lost at another: TE(h) = TE · (1 − λ (h /
 * h₀ − 1)), λ being the share lost at twice the distance.
 *
 * <p>No public table of transfer efficiency against distance was found: public studies say that it
 * falls, not by how much. So λ is a workshop's own figure, from two distances, or a band that is
 * shown as such, never a fact.
 *
 * @param likely λ to compute with, 0 to 1
 * @param least smallest λ that may be so, 0 to likely
 * @param most largest λ that may be so, likely to 1
 * @param basis what the figures rest on
 */
public record TransferLoss(double likely, double least, double most, Basis basis) {

  /** What a figure rests on, to be shown beside what is computed from it. */
  public enum Basis {
    /** Follows from geometry or conservation alone. */
    DERIVED,
    /** A rule of thumb without a published table; a band says how far it may be off. */
    RULE_OF_THUMB,
    /** Measured by this workshop with its own gun. */
    WORKSHOP
  }

  public TransferLoss {
    Valid.between("likely", likely, 0, 1);
    Valid.between("least", least, 0, likely);
    Valid.between("most", most, likely, 1);
  }

  /**
   * Assumption of this course: 30 % lost at twice the distance, anything from none to twice that.
   */
  public static TransferLoss assumed() {
    return new TransferLoss(0.3, 0, 0.6, Basis.RULE_OF_THUMB);
  }

  /**
   * A workshop's own figure from transfer efficiencies at two distances.
   *
   * @param near distance, metres, more than 0
   * @param atNear transfer efficiency there, more than 0, at most 1
   * @param far a larger distance, metres
   * @param atFar transfer efficiency there, more than 0, at most {@code atNear}
   * @throws MeasureException for other values, or where more would be lost than there is at twice
   *     the distance
   */
  public static TransferLoss measured(double near, double atNear, double far, double atFar) {
    Valid.positive("near", near);
    Valid.finite("far", far);
    if (!(far > near)) {
      throw new MeasureException("far", far, "more than near (" + near + ")");
    }
    Valid.share("atNear", atNear);
    Valid.share("atFar", atFar);
    Valid.between("atFar", atFar, 0, atNear);
    double lost = (1 - atFar / atNear) / (far / near - 1);
    Valid.between("share lost at twice the distance", lost, 0, 1);
    return new TransferLoss(lost, lost, lost, Basis.WORKSHOP);
  }

  /**
   * What likely arrives at another distance, over what arrived: above 1 from nearer, and a
   * hundredth where the straight line ends. For film whose efficiency nobody knows; {@link
   * PlanChange.Distance} has the same law for one that is known.
   *
   * @param ratio the other distance over the known one, more than 0
   */
  public double arriving(double ratio) {
    return Math.max(0.01, 1 - likely * (Valid.positive("ratio", ratio) - 1));
  }

  /**
   * Transfer efficiency at another distance, from 0.01 to 1: nearer more arrives, never more than
   * all; far away a hundredth is left, since the straight line ends there.
   *
   * @param efficiency at the known distance, more than 0, at most 1
   * @param ratio the other distance over the known one, more than 0
   * @param lostAtTwice λ, 0 to 1, one of the three of this record
   */
  static double at(double efficiency, double ratio, double lostAtTwice) {
    Valid.share("efficiency", efficiency);
    Valid.positive("ratio", ratio);
    return Math.max(0.01, Math.min(1, efficiency * (1 - lostAtTwice * (ratio - 1))));
  }
}
