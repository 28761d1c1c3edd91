package lapline.trade.mixing;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * What one part of a mix gives off, by its sheet.
 *
 * @param volume m³, more than 0
 * @param density kg/m³, more than 0
 * @param volatileShare of its mass that evaporates, water and exempt compounds included, 0 to 1
 * @param waterShare of its mass, 0 to 1
 * @param exemptShare of its mass, compounds that American law does not count, 0 to 1; with water
 *     not more than the volatile share
 * @param exemptDensity of those compounds, kg/m³, more than 0; any where there are none
 */
public record VocPart(
    double volume,
    double density,
    double volatileShare,
    double waterShare,
    double exemptShare,
    double exemptDensity) {

  /** Density of water at 25 °C, kg/m³, as ASTM D3960 has it (from memory). */
  public static final double WATER = 997;

  /** Rounding of shares that sheets give in whole per cent of one another. */
  private static final double ROUNDING = 1e-12;

  public VocPart {
    Valid.positive("volume", volume);
    Valid.positive("density", density);
    Valid.between("volatileShare", volatileShare, 0, 1);
    Valid.between("waterShare", waterShare, 0, 1);
    Valid.between("exemptShare", exemptShare, 0, 1);
    Valid.positive("exemptDensity", exemptDensity);
    if (waterShare + exemptShare > volatileShare + ROUNDING) {
      throw new MeasureException(
          "volatileShare", volatileShare, "at least the shares of water and exempt together");
    }
  }

  /**
   * A part without water or exempt compounds.
   *
   * @param volume m³, more than 0
   * @param density kg/m³, more than 0
   * @param volatileShare of its mass, 0 to 1
   */
  public static VocPart solventBorne(double volume, double density, double volatileShare) {
    return new VocPart(volume, density, volatileShare, 0, 0, 1);
  }

  private double mass() {
    return volume * density;
  }

  double volatiles() {
    return mass() * Math.max(volatileShare, waterShare + exemptShare);
  }

  double water() {
    return mass() * waterShare;
  }

  double exempt() {
    return mass() * exemptShare;
  }

  double waterVolume() {
    return water() / WATER;
  }

  double exemptVolume() {
    return exempt() / exemptDensity;
  }
}
