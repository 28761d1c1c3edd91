package lapline.trade.colour;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import lapline.trade.measure.MeasureException;

/**
 * A colour read at several angles from the mirror, all for one white; a solid colour at one.
 *
 * @param white what all the coordinates are stated for
 * @param colours at least one angle
 */
public record AngleSet(White white, Map<AspecularAngle, Lab> colours) {

  public AngleSet {
    if (colours.isEmpty()) {
      throw new MeasureException("colours.size", 0, "1 or more angles");
    }
    colours = Collections.unmodifiableMap(new EnumMap<>(colours));
  }

  /**
   * How much darker the colour gets from the face to the flop: 0 for a solid colour, about 15 to 17
   * for the strongest metallics.
   *
   * <p>2.69 (L*15 − L*110)^1.11 / L*45^0.86. Source: Alman, ISCC Williamsburg Conference 1987,
   * 53–56 (from memory).
   *
   * @return nothing when one of the three angles was not read
   * @throws MeasureException when it gets lighter towards the flop, for which the index is not made
   */
  public OptionalDouble flopIndex() {
    if (!has(AspecularAngle.A15) || !has(AspecularAngle.A45) || !has(AspecularAngle.A110)) {
      return OptionalDouble.empty();
    }
    double fall = lightness(AspecularAngle.A15) - lightness(AspecularAngle.A110);
    if (fall < 0) {
      throw new MeasureException("L*15 - L*110", fall, "0 or more");
    }
    double middle = lightness(AspecularAngle.A45);
    if (middle == 0) {
      throw new MeasureException("L*45", middle, "more than 0");
    }
    return OptionalDouble.of(2.69 * Math.pow(fall, 1.11) / Math.pow(middle, 0.86));
  }

  /**
   * L* of the angle nearest to the mirror less that of the farthest: the plain measure of travel,
   * negative where the flop is the lighter.
   *
   * @return nothing when one angle only was read
   */
  public OptionalDouble lightnessTravel() {
    if (colours.size() < 2) {
      return OptionalDouble.empty();
    }
    double[] inOrder = colours.values().stream().mapToDouble(Lab::lightness).toArray();
    return OptionalDouble.of(inOrder[0] - inOrder[inOrder.length - 1]);
  }

  private boolean has(AspecularAngle angle) {
    return colours.containsKey(angle);
  }

  private double lightness(AspecularAngle angle) {
    return colours.get(angle).lightness();
  }
}
