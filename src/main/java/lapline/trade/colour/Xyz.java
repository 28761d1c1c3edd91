package lapline.trade.colour;

import lapline.trade.measure.Valid;

/**
 * Tristimulus values of a surface or of a white, on the scale where a perfect white has Y = 100.
 *
 * <p>A flake seen near the mirror angle throws back more than a perfect white does, so Y may well
 * exceed 100.
 *
 * @param x finite, 0 or more
 * @param y finite, 0 or more
 * @param z finite, 0 or more
 */
public record Xyz(double x, double y, double z) {

  public Xyz {
    Valid.notNegative("X", x);
    Valid.notNegative("Y", y);
    Valid.notNegative("Z", z);
  }
}
