package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import lapline.practice.PanelOutline.Place;
import lapline.practice.PanelScore.NextPlace;

/**
 * The places at which a score asks for more readings: those there are, and new ones with letters.
 */
public final class FurtherPlaces {
  /** Two spots nearer than this are one: a gauge's foot covers as much. Course assumption. */
  private static final double SAME_SPOT = 0.01;

  private FurtherPlaces() {}

  /** One place for each advised spot, in their order, as far as there are letters for new ones. */
  public static List<Place> of(PanelOutline panel, List<NextPlace> advised) {
    List<Place> known = new ArrayList<>(panel.places());
    List<Place> places = new ArrayList<>();
    int next = PanelOutline.FURTHER + panel.furtherPlaces().size();
    for (NextPlace spot : advised) {
      Place there = known.stream().filter(p -> isAt(p, spot)).findFirst().orElse(null);
      if (there == null && next == PanelOutline.FURTHER + PanelOutline.MOST_FURTHER) {
        break;
      }
      if (there == null) {
        there = new Place(++next, spot.x(), spot.y(), "");
        known.add(there);
      }
      places.add(there);
    }
    return places;
  }

  private static boolean isAt(Place place, NextPlace spot) {
    return Math.hypot(place.x() - spot.x(), place.y() - spot.y()) < SAME_SPOT;
  }
}
