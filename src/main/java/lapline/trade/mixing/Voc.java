package lapline.trade.mixing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Volatile organic compounds of a mix ready to spray, from what its parts give off; kept in kg/m³,
 * which is g/L.
 *
 * <p>The American and the European figure of one mix are different numbers, for two reasons. The
 * American one takes exempt compounds (such as acetone) out above and below the line; the European
 * one knows none: whatever organic boils at up to 250 °C counts. And the American one always leaves
 * water out of the litre; the European one does so for all but preparatory and cleaning products.
 * So each is held against its own limits and never against the other's.
 *
 * <p>Source: 40 CFR 59.104(a); 2004/42/CE, Annex II. As exact as the sheet's volatile shares; a
 * test of the real mix (EPA Method 24, ISO 11890) goes before any computed figure.
 *
 * @param volatiles mass of all that evaporates, water and exempt compounds included, kg, 0 or more
 * @param water mass of water, kg, 0 or more
 * @param exempt mass of exempt compounds, kg, 0 or more
 * @param volume of the mix, m³, more than 0
 * @param waterVolume m³, 0 or more
 * @param exemptVolume m³, 0 or more
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
   * A mix of its parts, volumes adding up.
   *
   * @param parts at least one
   */
  public static Voc of(List<VocPart> parts) {
    return new Voc(
        sum(parts, VocPart::volatiles),
        sum(parts, VocPart::water),
        sum(parts, VocPart::exempt),
        sum(parts, VocPart::volume),
        sum(parts, VocPart::waterVolume),
        sum(parts, VocPart::exemptVolume));
  }

  private static double sum(List<VocPart> parts, ToDoubleFunction<VocPart> of) {
    return parts.stream().mapToDouble(of).sum();
  }

  /** Per volume less water and exempt compounds, kg/m³: what the American limits are set on. */
  public double lessWaterAndExempt() {
    return (volatiles - water - exempt) / (volume - waterVolume - exemptVolume);
  }

  /**
   * Per volume of mix as it is, kg/m³, exempt compounds left out: what a shop's emission counts.
   */
  public double actual() {
    return (volatiles - water - exempt) / volume;
  }

  /**
   * The European figure of the product ready to use, kg/m³, exempt compounds counted: what the
   * limits of 2004/42/CE are set on.
   */
  public double readyToUse(EuVocLimit category) {
    return (volatiles - water) / (category.waterLeftOut() ? volume - waterVolume : volume);
  }

  /**
   * The American average of a topcoat of several stages, the clear counting twice, kg/m³; a
   * two-stage topcoat is base and clear 1 : 2. The European limits know no such average: each
   * product keeps its own.
   *
   * <p>(base + Σ mid coats + 2 clear) / (mid coats + 3), 40 CFR 59.104(a)(2), algebra from memory.
   *
   * @param base less water and exempt, kg/m³, 0 or more
   * @param midCoats of each, kg/m³, 0 or more; none for a two-stage topcoat
   * @param clear kg/m³, 0 or more
   */
  public static double ofStages(double base, List<Double> midCoats, double clear) {
    Valid.notNegative("base", base);
    Valid.notNegative("clear", clear);
    double mid = midCoats.stream().mapToDouble(m -> Valid.notNegative("mid coat", m)).sum();
    return (base + mid + 2 * clear) / (midCoats.size() + 3);
  }
}
