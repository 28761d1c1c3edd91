package lapline.trade.spray;

import lapline.trade.measure.Valid;

/**
 * Mean film from the paint that leaves the gun, whatever the shape of its fan.
 *
 * <p>t̄ = Q·TE / (v·s) wet, times volume solids dry. Derived from conservation of volume; holds for
 * many even passes, away from the panel's ends.
 *
 * @param flow liquid through the gun, m³/s, more than 0
 * @param transferEfficiency share of it that reaches the panel, more than 0, at most 1
 * @param volumeSolids share of the liquid's volume that stays, more than 0, at most 1
 */
public record MassBalance(double flow, double transferEfficiency, double volumeSolids) {

  public MassBalance {
    Valid.positive("flow", flow);
    Valid.share("transferEfficiency", transferEfficiency);
    Valid.share("volumeSolids", volumeSolids);
  }

  /**
   * Mean dry film in metres.
   *
   * @param speed of the stroke, m/s, more than 0
   * @param spacing between centrelines, metres, more than 0
   */
  public double meanDryFilm(double speed, double spacing) {
    return meanWetFilm(speed, spacing) * volumeSolids;
  }

  /**
   * Mean film as deposited, metres, before any solvent is lost.
   *
   * @param speed of the stroke, m/s, more than 0
   * @param spacing between centrelines, metres, more than 0
   */
  public double meanWetFilm(double speed, double spacing) {
    Valid.positive("speed", speed);
    Valid.positive("spacing", spacing);
    return flow * transferEfficiency / (speed * spacing);
  }

  /**
   * Mean dry film over the fan of one single stroke, metres.
   *
   * @param speed m/s, more than 0
   * @param fanWidth metres, more than 0
   */
  public double strokeDryFilm(double speed, double fanWidth) {
    return meanDryFilm(speed, Valid.positive("fanWidth", fanWidth));
  }

  /**
   * Stroke speed in m/s that leaves a mean dry film.
   *
   * @param meanDryFilm wanted, metres, more than 0
   * @param spacing between centrelines, metres, more than 0
   */
  public double speedFor(double meanDryFilm, double spacing) {
    Valid.positive("meanDryFilm", meanDryFilm);
    Valid.positive("spacing", spacing);
    return flow * transferEfficiency * volumeSolids / (meanDryFilm * spacing);
  }
}
