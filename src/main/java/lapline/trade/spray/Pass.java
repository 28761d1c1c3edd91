package lapline.trade.spray;

import lapline.trade.measure.Valid;

/**
 * One stroke of the gun along x: where its middle runs, how wide its fan is and how much film it
 * leaves.
 *
 * <p>Source: point-source geometry, derived here; the fan's thickness along the stroke is left out.
 *
 * @param centreline y of the middle of the fan, metres
 * @param fanWidth on the panel at the intended distance, metres, more than 0
 * @param meanFilm mean over the fan of a steady stroke, metres, 0 or more
 * @param profile shape across the fan
 * @param stroke what the hand does along it
 */
public record Pass(
    double centreline, double fanWidth, double meanFilm, FanProfile profile, Stroke stroke) {

  public Pass {
    Valid.finite("centreline", centreline);
    Valid.positive("fanWidth", fanWidth);
    Valid.notNegative("meanFilm", meanFilm);
  }

  /** A pass at an even distance and speed, without ends. */
  public static Pass steady(
      double centreline, double fanWidth, double meanFilm, FanProfile profile) {
    return new Pass(centreline, fanWidth, meanFilm, profile, Stroke.steady());
  }

  /** The same pass with the hand moving otherwise. */
  public Pass by(Stroke other) {
    return new Pass(centreline, fanWidth, meanFilm, profile, other);
  }

  /** The same pass with the gun heeled: the fan shifts and widens and keeps its paint. */
  public Pass heeled(Heel heel) {
    return new Pass(
        centreline + heel.centreShift() * fanWidth,
        fanWidth * heel.widthRatio(),
        meanFilm / heel.widthRatio(),
        new HeeledProfile(profile, heel),
        stroke);
  }

  /**
   * Film in metres at a point of the panel.
   *
   * <p>The fan widens with distance and the film thins as much, so the paint per metre of stroke is
   * {@code meanFilm · fanWidth · deposit(x)} whatever the distance.
   *
   * @param x metres along the stroke, finite
   * @param y metres across it, finite
   */
  public double filmAt(double x, double y) {
    Valid.finite("x", x);
    Valid.finite("y", y);
    double distance = stroke.distance(x);
    double u = 2 * (y - centreline) / (fanWidth * distance);
    return meanFilm * profile.at(u) * stroke.deposit(x) / distance;
  }
}
