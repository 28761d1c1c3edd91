package lapline.practice.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Place;
import lapline.trade.film.FilmReadings;
import lapline.trade.measure.Estimate;

/**
 * The spots of a panel in the sense of SSPC-PA 2: reading places that stand together within a
 * circle of 4 cm. A place that stands alone is a spot of one reading, too few for that standard.
 */
final class FilmSpots {
  /** Radius of the circle, metres; drawings are made to the millimetre. */
  private static final double RADIUS = 0.02 + 0.0005;

  private FilmSpots() {}

  /** Readings by spot, in the order of the places; places without film are left out. */
  static List<FilmReadings> on(PanelOutline panel, Map<Integer, Estimate> film) {
    List<Place> left =
        new ArrayList<>(panel.places().stream().filter(p -> film.containsKey(p.number())).toList());
    List<FilmReadings> spots = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Place> spot = together(left);
      left.removeAll(spot);
      spots.add(new FilmReadings(spot.stream().map(p -> film.get(p.number()).value()).toList()));
    }
    return spots;
  }

  /** The first place with all that lie with it in one circle, taken one after another. */
  private static List<Place> together(List<Place> left) {
    List<Place> spot = new ArrayList<>();
    for (Place place : left) {
      spot.add(place);
      if (!fitsCircle(spot)) {
        spot.remove(place);
      }
    }
    return spot;
  }

  private static boolean fitsCircle(List<Place> places) {
    double x = places.stream().mapToDouble(Place::x).average().orElseThrow();
    double y = places.stream().mapToDouble(Place::y).average().orElseThrow();
    return places.stream().allMatch(p -> Math.hypot(p.x() - x, p.y() - y) <= RADIUS);
  }
}
