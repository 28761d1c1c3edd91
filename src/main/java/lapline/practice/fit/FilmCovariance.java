package lapline.practice.fit;

/**
 * How alike the film is at two points of a panel: Matérn of smoothness 5/2, with its own length
 * along and across the stroke, since spraying smooths along it (Rasmussen and Williams, Gaussian
 * Processes for Machine Learning, 2006, eq. 4.17).
 *
 * @param along length scale along x, metres
 * @param across length scale along y, metres
 * @param spread standard deviation of the film over the panel, metres
 */
record FilmCovariance(double along, double across, double spread) {
  private static final double ROOT_5 = Math.sqrt(5);

  double between(double x1, double y1, double x2, double y2) {
    double dx = (x1 - x2) / along;
    double dy = (y1 - y2) / across;
    double r = ROOT_5 * Math.sqrt(dx * dx + dy * dy);
    return spread * spread * (1 + r + r * r / 3) * Math.exp(-r);
  }
}
