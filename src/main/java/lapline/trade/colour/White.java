package lapline.trade.colour;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * The light and the observer that a colour is stated for, as the tristimulus values of a perfect
 * white under them.
 *
 * <p>Coordinates for one white say nothing under another: (30, 40, 50) moves by more than 0.7 in b*
 * between the observers of 2° and 10°. A reading therefore keeps its white, and {@link Lab} of
 * different whites are never compared.
 *
 * @param light the illuminant's name, such as D65
 * @param observer field of the standard observer in degrees, 2 or 10
 * @param perfect tristimulus values of the perfect white, none of them 0
 */
public record White(String light, int observer, Xyz perfect) {
  /** Daylight, as sprayed panels are usually judged. ASTM E308 (from memory). */
  public static final White D65_10 = new White("D65", 10, new Xyz(94.811, 100, 107.304));

  /** Daylight on small fields. ASTM E308 (from memory). */
  public static final White D65_2 = new White("D65", 2, new Xyz(95.047, 100, 108.883));

  /** Light of a printing booth. ASTM E308 (from memory). */
  public static final White D50_2 = new White("D50", 2, new Xyz(96.422, 100, 82.521));

  public White {
    if (observer != 2 && observer != 10) {
      throw new MeasureException("observer", observer, "2 or 10 degrees");
    }
    Valid.positive("white X", perfect.x());
    Valid.positive("white Y", perfect.y());
    Valid.positive("white Z", perfect.z());
  }
}
