package lapline.trade.spray;

import lapline.trade.measure.Valid;

/**
 * A way of laying on one coat: what the gun gives, the shape and width of its fan, how far, how
 * fast and how close the passes lie.
 *
 * <p>Film is that of endlessly many even passes, away from the panel's ends; flow of the wet film
 * afterwards is left out.
 *
 * @param paint flow, transfer efficiency at {@code distance}, volume solids
 * @param fan its test pattern
 * @param profile its shape
 * @param distance of the gun, metres, more than 0
 * @param speed of the stroke, m/s, more than 0
 * @param spacing between centrelines, metres, more than 0; with the fan's width at this distance an
 *     overlap of −1 to 0.95
 */
public record StrokePlan(
    MassBalance paint, Fan fan, FanProfile profile, double distance, double speed, double spacing) {

  public StrokePlan {
    Valid.positive("distance", distance);
    Valid.positive("speed", speed);
    Valid.positive("spacing", spacing);
    Valid.between("overlap", 1 - spacing / fan.widthAt(distance), -1, 0.95);
  }

  /** Width of the fan on the panel, metres. */
  public double fanWidth() {
    return fan.widthAt(distance);
  }

  /** Share of the fan that the next pass covers again; negative where a strip stays bare. */
  public double overlap() {
    return 1 - spacing / fanWidth();
  }

  /**
   * Dry film of one coat, metres: its mean, spread and extremes.
   *
   * <p>The mean is flow · TE · volume solids / (speed · spacing) for every profile.
   */
  public Ripple dryFilm() {
    Ripple relative = Ripple.ofEvenPasses(profile, overlap());
    double stroke = paint.strokeDryFilm(speed, fanWidth());
    return new Ripple(
        relative.mean() * stroke,
        relative.spread() * stroke,
        relative.least() * stroke,
        relative.most() * stroke);
  }

  /**
   * The passes of one coat, for a field over a real panel.
   *
   * @param first y of the lowest centreline, metres, finite
   * @param count of passes, 1 to 10,000
   */
  public CoatField coat(double first, int count) {
    Pass pass = Pass.steady(first, fanWidth(), paint.strokeDryFilm(speed, fanWidth()), profile);
    return CoatField.evenlySpaced(pass, spacing, count);
  }

  StrokePlan withDistance(double other, double transferEfficiency) {
    MassBalance arriving = new MassBalance(paint.flow(), transferEfficiency, paint.volumeSolids());
    return new StrokePlan(arriving, fan, profile, other, speed, spacing);
  }

  StrokePlan withSpeed(double other) {
    return new StrokePlan(paint, fan, profile, distance, other, spacing);
  }

  StrokePlan withSpacing(double other) {
    return new StrokePlan(paint, fan, profile, distance, speed, other);
  }

  StrokePlan withFlow(double other) {
    MassBalance changed = new MassBalance(other, paint.transferEfficiency(), paint.volumeSolids());
    return new StrokePlan(changed, fan, profile, distance, speed, spacing);
  }
}
