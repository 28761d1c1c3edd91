package lapline.practice.fit;

import java.util.List;

/**
 * What one cause, in one form of it, would add to an even film.
 *
 * @param thicker what it means when the pattern comes out positive; null where that cannot be
 * @param thinner what it means when it comes out negative; null where that cannot be
 * @param shapes one; two where both edges have their own amount; or the cosine and sine of one
 *     period, which mean the same whatever their signs
 * @param searched how many further numbers, such as a place or a period, were picked to fit; each
 *     counts as a parameter
 * @param most largest size that the cause can have, as a share of the mean film
 * @param where the number that was picked, in metres: a height on the panel or a period; NaN
 */
record FilmPattern(
    Meaning thicker, Meaning thinner, List<Shape> shapes, int searched, double most, double where) {

  /**
   * What a fitted pattern speaks for.
   *
   * @param form which form of the cause, as the end of a message key; empty where there is but one
   */
  record Meaning(Cause cause, String form) {}

  static FilmPattern of(Meaning thicker, Meaning thinner, Shape shape, int searched) {
    return new FilmPattern(thicker, thinner, List.of(shape), searched, 1, Double.NaN);
  }

  FilmPattern at(double newWhere) {
    return new FilmPattern(thicker, thinner, shapes, searched, most, newWhere);
  }

  FilmPattern upTo(double newMost) {
    return new FilmPattern(thicker, thinner, shapes, searched, newMost, where);
  }

  /** What it means with these amounts of its shapes; null where no cause would do that. */
  Meaning meaning(double[] amounts) {
    if (isWave()) {
      return thicker;
    }
    boolean mixed = amounts.length == 2 && amounts[0] * amounts[1] < 0;
    return mixed ? null : amounts[0] > 0 ? thicker : thinner;
  }

  /** Thickest less thinnest that these amounts imply, seen by the places or not; metres. */
  double implied(double[] amounts) {
    if (isWave()) {
      return 2 * Math.hypot(amounts[0], amounts[1]);
    }
    double most = Math.abs(amounts[0]);
    return amounts.length == 1 ? most : Math.max(most, Math.abs(amounts[1]));
  }

  private boolean isWave() {
    return shapes.size() == 2 && thinner == null;
  }
}
