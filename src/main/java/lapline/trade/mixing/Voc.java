package lapline.trade.mixing;

import java.util.List;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Volatile organic compounds of a mix ready to spray, from what its parts give off; kept in kg/m³,
 * which is g/L.
 *
 * <p>Source: 40 CFR 59.104(a). The European figure of 2004/42/CE leaves water out in its own way
 * and is another number.
 *
 * @param volatiles mass of all that evaporates, water and exempt compounds included, kg
 * @param water mass of water, kg
 * @param exempt mass of exempt compounds, kg
 * @param volume of the mix, m³, more than 0
 * @param waterVolume m³
 * @param exemptVolume m³
 */
public record Voc(
    double volatiles,
    double water,
    double exempt,
    double volume,
    double waterVolume,
    double exemptVolume) {

  public Voc {
    Valid.notNegative("volatiles", volatiles);
    Valid.notNegative("water", water);
    Valid.notNegative("exempt", exempt);
    Valid.positive("volume", volume);
    Valid.notNegative("waterVolume", waterVolume);
    Valid.notNegative("exemptVolume", exemptVolume);
    if (water + exempt > volatiles) {
      throw new MeasureException("volatiles", volatiles, "at least water and exempt together");
    }
    Valid.positive("volume less water and exempt", volume - waterVolume - exemptVolume);
  }

  /**
   * One part of a solvent-borne mix.
   *
   * @param volume m³, more than 0
   * @param density kg/m³, more than 0
   * @param volatileShare of its mass, 0 to 1
   */
  public record Part(double volume, double density, double volatileShare) {

    public Part {
      Valid.positive("volume", volume);
      Valid.positive("density", density);
      Valid.between("volatileShare", volatileShare, 0, 1);
    }
  }

  /** A mix without water or exempt compounds. */
  public static Voc ofSolventBorne(List<Part> parts) {
    double mass = parts.stream().mapToDouble(p -> p.volume * p.density * p.volatileShare).sum();
    double volume = parts.stream().mapToDouble(Part::volume).sum();
    return new Voc(mass, 0, 0, volume, 0, 0);
  }

  /** Per volume of mix less water and exempt compounds: what the limits are set on. */
  public double lessWaterAndExempt() {
    return (volatiles - water - exempt) / (volume - waterVolume - exemptVolume);
  }

  /** Per volume of mix as it is: what goes into the air. */
  public double actual() {
    return (volatiles - water - exempt) / volume;
  }

  /**
   * Average of a topcoat of several stages, the clear counting twice.
   *
   * <p>(base + Σ mid coats + 2 clear) / (mid coats + 3), 40 CFR 59.104(a)(2), algebra from memory.
   */
  public static double ofStages(double base, List<Double> midCoats, double clear) {
    Valid.notNegative("base", base);
    Valid.notNegative("clear", clear);
    double mid = midCoats.stream().mapToDouble(m -> Valid.notNegative("mid coat", m)).sum();
    return (base + mid + 2 * clear) / (midCoats.size() + 3);
  }
}
