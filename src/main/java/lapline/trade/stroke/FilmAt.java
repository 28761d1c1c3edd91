package lapline.trade.stroke;

import lapline.trade.measure.Valid;

/**
 * Film read at one place of a panel.
 *
 * @param x along the stroke from the left edge, metres, finite
 * @param y across the strokes from the lower edge, metres, finite
 * @param film metres, finite; below 0 by a gauge's error
 * @param uncertainty standard uncertainty of the reading, texture of the film included, metres,
 *     more than 0
 */
public record FilmAt(double x, double y, double film, double uncertainty) {

  public FilmAt {
    Valid.finite("x", x);
    Valid.finite("y", y);
    Valid.finite("film", film);
    Valid.positive("uncertainty", uncertainty);
  }
}
