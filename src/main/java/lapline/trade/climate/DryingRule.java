package lapline.trade.climate;

import lapline.trade.measure.Valid;

/**
 * Rules of thumb that carry a drying time from the temperature of a product's sheet to another,
 * where the sheet itself is silent. Each answer says that it is one.
 *
 * <p>There is no rule here for the flash of solvent-borne paint: it is evaporation of a blend that
 * only its maker knows, at an air speed that no sheet gives, so outside the card's temperatures the
 * answer is to wait until it is dull and to ask the maker.
 */
public final class DryingRule {

  private DryingRule() {}

  /**
   * Cure of a two-pack film: ten degrees more halve it, as they do the pot life. Common rule, no
   * standard; the farther from the sheet's temperature the less it is worth, and nothing below the
   * least temperature that the sheet allows.
   *
   * @param known time by the sheet
   * @param at panel temperature that it is given for, °C, −20 to 150
   * @param panel temperature of the panel (not of the air), °C, −20 to 150
   */
  public static DryingTime cure(DryingTime known, double at, double panel) {
    Valid.between("at", at, -20, 150);
    Valid.between("panel", panel, -20, 150);
    return known.stretched(Math.pow(2, (at - panel) / 10));
  }

  /**
   * Flash of water-borne paint: water leaves in proportion to what the air can still take up,
   * e_s(T) (1 − RH), as Dalton's law of evaporation has it, with the same air speed and film. The
   * film is taken to be as warm as the air, though it cools as it dries.
   *
   * @param known time by the sheet
   * @param at air that it is given for
   * @param now air there is
   */
  public static DryingTime waterFlash(DryingTime known, MoistAir at, MoistAir now) {
    return known.stretched(at.dryingPower() / now.dryingPower());
  }

  /**
   * Air with its water.
   *
   * @param temperature °C, −45 to 60
   * @param humidity relative, as a share, more than 0, below 1: nothing dries in saturated air
   */
  public record MoistAir(double temperature, double humidity) {

    public MoistAir {
      Valid.between("temperature", temperature, -45, 60);
      Valid.between("humidity", humidity, Double.MIN_VALUE, Math.nextDown(1.0));
    }

    /** Pressure of water vapour that this air could still take up, Pa. */
    public double dryingPower() {
      return DewPoint.saturation(temperature) * (1 - humidity);
    }
  }
}
