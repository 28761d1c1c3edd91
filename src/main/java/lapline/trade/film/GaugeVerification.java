package lapline.trade.film;

import java.util.List;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Whether a film gauge reads its certified standards well enough to be believed; asked before and
 * after each period of use. Not its calibration, which a laboratory does, nor its adjustment.
 *
 * <p>A gauge agrees with a standard where the mean of its readings lies within the root of the sum
 * of squares of both accuracies. Source: ASTM D7091, verification of accuracy, with its example of
 * 5 % and 5 % making 7 %, from memory; SSPC-PA 2 and ISO 19840 ask for a verified gauge too.
 *
 * @param standards one at least; one near the film that is expected, better one on either side
 */
public record GaugeVerification(List<OnStandard> standards) {
  /** Fewest readings on a standard that a mean is taken of. */
  public static final int READINGS = 3;

  public GaugeVerification {
    if (standards.isEmpty()) {
      throw new MeasureException("number of standards", 0, "1 or more");
    }
    standards = List.copyOf(standards);
  }

  /**
   * How near to the truth a gauge or a standard is said to be: ± (share · value + fixed).
   *
   * @param share of the value, 0 to 1
   * @param fixed metres, 0 or more
   */
  public record Accuracy(double share, double fixed) {
    public Accuracy {
      Valid.between("share", share, 0, 1);
      Valid.notNegative("fixed", fixed);
    }

    double at(double film) {
      return share * film + fixed;
    }
  }

  /**
   * What the gauge read on one certified standard: a foil, or a coated plate.
   *
   * @param certified thickness on its certificate, metres, more than 0
   * @param ofStandard its accuracy
   * @param ofGauge the gauge's accuracy by its maker
   * @param readings three or more, metres
   */
  public record OnStandard(
      double certified, Accuracy ofStandard, Accuracy ofGauge, FilmReadings readings) {
    public OnStandard {
      Valid.positive("certified", certified);
      Valid.between("readings on a standard", readings.count(), READINGS, Integer.MAX_VALUE);
    }

    /** Mean read less certified, metres. */
    public double deviation() {
      return readings.mean() - certified;
    }

    /** How far the mean may lie off, metres. */
    public double tolerance() {
      return Math.hypot(ofStandard.at(certified), ofGauge.at(certified));
    }

    /** Whether it lies no further off; on the tolerance agrees. */
    public boolean agrees() {
      return Limits.notAbove(Math.abs(deviation()), tolerance());
    }

    /** How much of the tolerance is used up; infinite where there is none and the mean is off. */
    double used() {
      return agrees() && tolerance() == 0 ? 0 : Math.abs(deviation()) / tolerance();
    }
  }

  /** Whether the gauge agrees with all its standards. */
  public boolean agrees() {
    return standards.stream().allMatch(OnStandard::agrees);
  }

  /** Most of a tolerance that any standard uses up: above 1 where the gauge does not agree. */
  public double worst() {
    return standards.stream().mapToDouble(OnStandard::used).max().orElseThrow();
  }

  /** What a verification before and one after say of the readings taken between them. */
  public enum Standing {
    /** Good before and after. */
    SOUND,
    /** Not good before: adjust the gauge or take another, then read. */
    NOT_TO_BE_USED,
    /** Good before, not after: all since the last good one are suspect and are taken again. */
    SUSPECT
  }

  /** What this one before and another after say of the readings between them. */
  public Standing until(GaugeVerification after) {
    if (!agrees()) {
      return Standing.NOT_TO_BE_USED;
    }
    return after.agrees() ? Standing.SOUND : Standing.SUSPECT;
  }
}
