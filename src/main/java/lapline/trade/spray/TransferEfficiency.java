package lapline.trade.spray;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.Valid;

/**
 * The share of what was sprayed that is found on the panel, from the cup weighed before and after
 * and the film that dried.
 *
 * <p>TE = dry film · area · density / (mass sprayed · volume solids): the volume of what stayed
 * over the volume of what could have. Derived from conservation of volume; the published test
 * methods (EPA/600/S2-88/026, seen by title) weigh the panel instead, which this does not need.
 * Paint that dried on the panel's edges and back counts as lost. Uncertainty to first order, all
 * readings independent: good up to a few per cent in each of them.
 */
public final class TransferEfficiency {
  private TransferEfficiency() {}

  /**
   * Transfer efficiency as a share; above 1 only by error of the readings.
   *
   * @param dryFilm mean over the area, metres, more than 0
   * @param area that was sprayed, m², more than 0
   * @param massSprayed of ready-to-spray paint, kg, more than 0
   * @param density of it, kg/m³, more than 0
   * @param volumeSolids share of it, more than 0, at most 1
   * @throws lapline.trade.measure.MeasureException for other values
   */
  public static Estimate of(
      Estimate dryFilm,
      Estimate area,
      Estimate massSprayed,
      Estimate density,
      Estimate volumeSolids) {
    Valid.positive("dryFilm", dryFilm.value());
    Valid.positive("area", area.value());
    Valid.positive("massSprayed", massSprayed.value());
    Valid.positive("density", density.value());
    Valid.share("volumeSolids", volumeSolids.value());
    double share =
        dryFilm.value()
            * area.value()
            * density.value()
            / (massSprayed.value() * volumeSolids.value());
    return Gum.combine(
        share,
        List.of(
            part(share, dryFilm),
            part(share, area),
            part(share, density),
            part(-share, massSprayed),
            part(-share, volumeSolids)));
  }

  private static Part part(double share, Estimate factor) {
    return new Part(share / factor.value(), factor);
  }

  /** Whether it can be true: not above 1 by more than three standard uncertainties. */
  public static boolean isPossible(Estimate efficiency) {
    return efficiency.value() - 3 * efficiency.standardUncertainty() <= 1;
  }
}
