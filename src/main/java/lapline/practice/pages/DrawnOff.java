package lapline.practice.pages;

import java.util.List;
import lapline.practice.FilmField;
import lapline.practice.PanelScore;
import lapline.trade.stroke.StrokeFilm;

/**
 * How far a panel's readings lie off its film as the stroke draws it. Taken from the middle one, so
 * that a few strays do not discredit a film that fits all the others.
 *
 * @param half half of the readings lie so far off or more, metres
 * @param byChance the same where gauge and texture are all that is between them, metres
 * @param noPattern whether the score found that no stroke explains the film
 */
record DrawnOff(double half, double byChance, boolean noPattern) {
  /** So many times what chance explains is another film; course assumption. */
  private static final double TOO_FAR = 2;

  /** The middle of the absolute deviations of a normal distribution, over its standard one. */
  private static final double HALF_OF_NORMAL = 0.6745;

  /**
   * @param scatter standard deviation of a reading by gauge and texture, metres
   */
  static DrawnOff of(PanelScore score, double scatter) {
    StrokeFilm drawn = score.stroke();
    List<Double> off = score.film().places().stream().map(p -> off(p, drawn)).sorted().toList();
    return new DrawnOff(off.get(off.size() / 2), HALF_OF_NORMAL * scatter, score.fitsNoPattern());
  }

  private static double off(FilmField.PlaceFilm place, StrokeFilm drawn) {
    return Math.abs(place.film() - drawn.at(place.x(), place.y()));
  }

  /** Whether the film that is drawn is not that of this panel. */
  boolean isAnotherFilm() {
    return noPattern || half > TOO_FAR * byChance;
  }
}
