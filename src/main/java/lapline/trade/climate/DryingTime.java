package lapline.trade.climate;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * How long to wait before the next coat (flash) or until a film has hardened (cure), and what that
 * rests on. It never replaces the touch test on the masking: dull and no longer tacky.
 *
 * @param least seconds, 0 or more
 * @param most seconds, not below {@code least}; infinite where nothing limits it
 * @param basis what the figures rest on
 */
public record DryingTime(double least, double most, Basis basis) {

  /** What a time rests on; a page says it beside the time. */
  public enum Basis {
    /** The product's sheet, as the workshop entered it, for this very temperature. */
    PRODUCT_CARD,
    /** A rule of thumb carried from another temperature; a guess to be checked by touch. */
    RULE_OF_THUMB
  }

  public DryingTime {
    Valid.notNegative("least", least);
    if (!(most >= least)) {
      throw new MeasureException("most", most, "not below least, " + least);
    }
  }

  /** The times that keep it, seconds, both ends included. */
  public TargetRange window() {
    return new TargetRange(least, most);
  }

  /**
   * The same stretched by a rule of thumb.
   *
   * @param factor more than 0
   */
  DryingTime stretched(double factor) {
    Valid.positive("factor", factor);
    return new DryingTime(least * factor, most * factor, Basis.RULE_OF_THUMB);
  }
}
