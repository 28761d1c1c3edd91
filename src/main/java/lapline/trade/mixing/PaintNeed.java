package lapline.trade.mixing;

import java.util.List;
import lapline.trade.film.SpreadingRate;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.Valid;

/**
 * How much ready-to-spray mix an area takes at a dry film, through what misses the panel.
 *
 * <p>V = A · DFT / (VS · TE · (1 − waste)): conservation of the solids' volume. The uncertainty is
 * to first order, and as good as that of the transfer efficiency, as a rule the least known of
 * them; film counts all coats together.
 *
 * @param area to be coated, m², 0 or more
 * @param dryFilm of all coats together, metres, more than 0
 * @param transferEfficiency share of the sprayed solids that stays on the panel, more than 0, at
 *     most 1
 * @param otherWaste share left in cup, hose and cleaning, 0 to below 1
 */
public record PaintNeed(
    Estimate area, Estimate dryFilm, Estimate transferEfficiency, double otherWaste) {

  public PaintNeed {
    Valid.notNegative("area", area.value());
    Valid.positive("dryFilm", dryFilm.value());
    Valid.share("transferEfficiency", transferEfficiency.value());
    Valid.between("otherWaste", otherWaste, 0, Math.nextDown(1.0));
  }

  /**
   * Ready-to-spray mix, m³.
   *
   * @param solids of that mix, reducer included
   */
  public Estimate volume(VolumeSolids solids) {
    double rate =
        SpreadingRate.practical(solids, dryFilm.value(), transferEfficiency.value(), otherWaste);
    double volume = area.value() / rate;
    return Gum.combine(
        volume,
        List.of(
            new Part(1 / rate, area),
            new Part(volume / dryFilm.value(), dryFilm),
            new Part(-volume / transferEfficiency.value(), transferEfficiency)));
  }

  /**
   * Each part to pour, m³, in the order of the ratio.
   *
   * @param ratio of the ready-to-spray mix
   * @param solids by volume of each part, 0 (a reducer) to 1, as many as parts, not all 0
   */
  public List<Double> parts(MixRatio ratio, List<Double> solids) {
    double volume = volume(VolumeSolids.ofMix(ratio.parts(), solids)).value();
    return ratio.parts().stream().map(p -> volume * p / ratio.sum()).toList();
  }
}
