package lapline.trade.spray;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Where the paint of a job went: onto the panel, past it, and into the air as solvent.
 *
 * <p>By conservation of volume. All solvent is taken to evaporate, from the panel and from the
 * overspray alike, as the emission rules count it (40 CFR 59.104(a); what water and exempt
 * compounds give off is left out of the organic content that is passed in).
 *
 * @param sprayed volume of ready-to-spray paint that left the gun, m³, more than 0
 * @param volumeSolids share of it, more than 0, at most 1
 * @param dryOnPanel volume of the dry film, m³, 0 or more, at most all solids sprayed
 * @param organicContent kg of volatile organic compounds per m³ of mix (g/L), 0 or more
 */
public record PaintUse(
    double sprayed, double volumeSolids, double dryOnPanel, double organicContent) {
  /** Takes up the rounding of binary numbers only. */
  private static final double ROUNDING = 1e-9;

  public PaintUse {
    Valid.positive("sprayed", sprayed);
    Valid.share("volumeSolids", volumeSolids);
    Valid.notNegative("dryOnPanel", dryOnPanel);
    Valid.notNegative("organicContent", organicContent);
    double most = sprayed * volumeSolids;
    if (dryOnPanel > most * (1 + ROUNDING)) {
      throw new MeasureException("dryOnPanel", dryOnPanel, "0 to the solids sprayed, " + most);
    }
  }

  /**
   * A job of which the share that arrives is known.
   *
   * @param transferEfficiency more than 0, at most 1
   */
  public static PaintUse of(
      double sprayed, double volumeSolids, double transferEfficiency, double organicContent) {
    double arrived = Valid.share("transferEfficiency", transferEfficiency);
    return new PaintUse(sprayed, volumeSolids, sprayed * volumeSolids * arrived, organicContent);
  }

  /**
   * Ready-to-spray paint of one coat, m³: flow times the time the trigger is pulled.
   *
   * @param flow m³/s, more than 0
   * @param passes 1 to 10,000
   * @param stroke on the panel and beyond its edges, trigger on to trigger off, metres, more than 0
   * @param speed m/s, more than 0
   */
  public static double ofCoat(double flow, int passes, double stroke, double speed) {
    Valid.between("passes", passes, 1, 10_000);
    return Valid.positive("flow", flow)
        * passes
        * Valid.positive("stroke", stroke)
        / Valid.positive("speed", speed);
  }

  /** Share of the solids that is on the panel, trigger and edges counted: 0 to 1. */
  public double efficiency() {
    return Math.min(1, dryOnPanel / (sprayed * volumeSolids));
  }

  /** Solids that went past the panel, into filters and onto the booth, m³. */
  public double oversprayDry() {
    return Math.max(0, sprayed * volumeSolids - dryOnPanel);
  }

  /** Ready-to-spray paint that went past the panel, m³. */
  public double overspray() {
    return oversprayDry() / volumeSolids;
  }

  /** Volatile organic compounds given off, kg. */
  public double solventEmitted() {
    return sprayed * organicContent;
  }
}
