package lapline.trade.film;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * How strictly SSPC-PA 2 takes spot and area means, 1 the strictest; 3 applies where none is
 * specified. Single gauge readings are free at every level.
 *
 * <p>Source: SSPC-PA 2, Table 1, from memory.
 */
public enum RestrictionLevel {
  LEVEL_1(1, 1, false),
  LEVEL_2(1, 1.2, false),
  LEVEL_3(0.8, 1.2, false),
  LEVEL_4(0.8, 1.5, false),
  LEVEL_5(0.8, Double.POSITIVE_INFINITY, true);

  private final double spotLeast;
  private final double spotMost;
  private final boolean thickAreaAllowed;

  RestrictionLevel(double spotLeast, double spotMost, boolean thickAreaAllowed) {
    this.spotLeast = spotLeast;
    this.spotMost = spotMost;
    this.thickAreaAllowed = thickAreaAllowed;
  }

  /**
   * Least mean of a spot, metres.
   *
   * @param specifiedLeast metres, more than 0
   */
  public double spotLeast(double specifiedLeast) {
    return spotLeast * Valid.positive("specifiedLeast", specifiedLeast);
  }

  /**
   * Largest mean of a spot, metres; infinite at level 5.
   *
   * @param specifiedMost metres, more than 0; infinite where none is specified
   */
  public double spotMost(double specifiedMost) {
    return spotMost * checked(specifiedMost);
  }

  /**
   * Largest mean of an area, metres; infinite at level 5.
   *
   * @param specifiedMost metres, more than 0; infinite where none is specified
   */
  public double areaMost(double specifiedMost) {
    return thickAreaAllowed ? Double.POSITIVE_INFINITY : checked(specifiedMost);
  }

  private static double checked(double specifiedMost) {
    if (!(specifiedMost > 0)) {
      throw new MeasureException("specifiedMost", specifiedMost, "more than 0");
    }
    return specifiedMost;
  }
}
