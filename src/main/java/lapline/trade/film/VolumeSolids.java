package lapline.trade.film;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * The share of what is in the gun, by volume, that stays on the panel when it has dried; links wet
 * film and dry film.
 *
 * <p>DFT = WFT · VS. Source: ISO 3233 and ASTM D2697 (volume of non-volatile matter), from memory.
 * Exact while no solvent leaves before the wet film is read.
 *
 * @param share more than 0, at most 1
 */
public record VolumeSolids(double share) {

  public VolumeSolids {
    Valid.share("volume solids", share);
  }

  /**
   * Volume solids of a mix: each part's solids weighted by its volume.
   *
   * @param parts volumes in any one unit, 0 or more, not all 0
   * @param solids share of each part, 0 (a reducer) to 1
   */
  public static VolumeSolids ofMix(List<Double> parts, List<Double> solids) {
    if (parts.size() != solids.size()) {
      throw new MeasureException("solids", solids.size(), "one for each of " + parts.size());
    }
    double all = 0;
    double solid = 0;
    for (int i = 0; i < parts.size(); i++) {
      all += Valid.notNegative("part", parts.get(i));
      solid += parts.get(i) * Valid.between("solids of part", solids.get(i), 0, 1);
    }
    return new VolumeSolids(solid / Valid.positive("sum of parts", all));
  }

  /**
   * Solids of the same paint with reducer in it: VS / (1 + r).
   *
   * @param reducer volume of reducer added per volume of paint, 0 or more: 0.25 for 25 %
   */
  public VolumeSolids thinnedBy(double reducer) {
    return new VolumeSolids(share / (1 + Valid.notNegative("reducer", reducer)));
  }

  /**
   * Dry film in metres.
   *
   * @param wetFilm metres, 0 or more
   */
  public double dryFrom(double wetFilm) {
    return Valid.notNegative("wetFilm", wetFilm) * share;
  }

  /**
   * Wet film in metres that dries to a film.
   *
   * @param dryFilm metres, 0 or more
   */
  public double wetFor(double dryFilm) {
    return Valid.notNegative("dryFilm", dryFilm) / share;
  }

  /**
   * Dry film from a measured wet film; the solids are taken as exact.
   *
   * @param wetFilm metres, 0 or more
   */
  public Estimate dryFrom(Estimate wetFilm) {
    Valid.notNegative("wetFilm", wetFilm.value());
    return Gum.scale(share, wetFilm);
  }
}
