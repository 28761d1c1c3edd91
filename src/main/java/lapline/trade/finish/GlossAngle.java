package lapline.trade.finish;

import lapline.trade.measure.Valid;

/**
 * The angles at which gloss is read, from the panel's normal. Gloss units of one angle are not
 * those of another, and no formula turns one into the other for a real film.
 *
 * <p>Source: ISO 2813:2014, ASTM D523.
 */
public enum GlossAngle {
  DEGREES_20(20),
  DEGREES_60(60),
  DEGREES_85(85);

  private final int degrees;

  GlossAngle(int degrees) {
    this.degrees = degrees;
  }

  /** From the normal, degrees. */
  public int degrees() {
    return degrees;
  }

  /** From the normal, radians. */
  public double radians() {
    return Math.toRadians(degrees);
  }

  /**
   * The angle that tells films of this gloss best apart: 60° first, 20° where it reads above 70,
   * 85° where it reads below 10.
   *
   * @param glossAt60 gloss units at 60°, 0 or more; exactly 70 and exactly 10 stay with 60°
   */
  public static GlossAngle bestFor(double glossAt60) {
    Valid.notNegative("glossAt60", glossAt60);
    return glossAt60 > 70 ? DEGREES_20 : glossAt60 < 10 ? DEGREES_85 : DEGREES_60;
  }
}
