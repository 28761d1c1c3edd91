package lapline.trade.colour;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * How far a colour may be off, as CIEDE2000 at every angle.
 *
 * <p>No public standard gives numbers for repairs, so these belong to the course or the workshop.
 *
 * @param butted up to here two panels may stand edge to edge, more than 0
 * @param blended up to here a blend hides it, at least as much
 */
public record MatchLimits(double butted, double blended) {
  /** What the course asks for unless a workshop says otherwise: common practice, no source. */
  public static final MatchLimits COURSE = new MatchLimits(1, 3);

  public MatchLimits {
    Valid.positive("butted", butted);
    Valid.positive("blended", blended);
    if (blended < butted) {
      throw new MeasureException("blended", blended, "at least the limit for butting, " + butted);
    }
  }
}
