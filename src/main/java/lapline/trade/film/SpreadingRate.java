package lapline.trade.film;

import lapline.trade.measure.Valid;

/**
 * How far paint goes: the area that a volume of it covers at a dry film.
 *
 * <p>Kept as m² per m³; 1000 m²/m³ is 1 m²/L. Volume solids over dry film, exact by conservation of
 * volume; in trade units m²/L = 10 · VS% / DFT in µm.
 */
public final class SpreadingRate {
  private SpreadingRate() {}

  /**
   * Area per volume, m²/m³, with nothing lost.
   *
   * @param dryFilm metres, more than 0
   */
  public static double theoretical(VolumeSolids solids, double dryFilm) {
    return solids.share() / Valid.positive("dryFilm", dryFilm);
  }

  /**
   * Area per volume, m²/m³, of what leaves the gun.
   *
   * @param dryFilm metres, more than 0
   * @param transferEfficiency share of the paint that reaches the panel, more than 0, at most 1
   * @param otherWaste share left in the cup, the hose and the cleaning, 0 to below 1
   */
  public static double practical(
      VolumeSolids solids, double dryFilm, double transferEfficiency, double otherWaste) {
    Valid.between("otherWaste", otherWaste, 0, Math.nextDown(1.0));
    return theoretical(solids, dryFilm)
        * Valid.share("transferEfficiency", transferEfficiency)
        * (1 - otherWaste);
  }

  /**
   * Ready-to-spray paint to mix for an area, m³.
   *
   * @param area m², 0 or more
   * @param dryFilm metres, more than 0
   * @param transferEfficiency more than 0, at most 1
   */
  public static double volumeFor(
      double area, VolumeSolids solids, double dryFilm, double transferEfficiency) {
    return Valid.notNegative("area", area) / practical(solids, dryFilm, transferEfficiency, 0);
  }
}
