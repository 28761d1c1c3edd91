package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.practice.FurtherPlaces;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Place;
import lapline.practice.PanelScore.NextPlace;
import lapline.trade.measure.Dimension;

/** Says where on a panel further readings are worth taking, each place by its name. */
final class NextPlaceWords {
  private NextPlaceWords() {}

  /** One sentence a spot, with what it would read where that is foretold. */
  static List<String> of(PanelOutline panel, List<NextPlace> advised, PhraseWriter words) {
    return of(panel, advised, "practice-result.spot.foretold", words);
  }

  /** The same where the first of several causes is told from the others. */
  static List<String> ofSeveral(PanelOutline panel, List<NextPlace> advised, PhraseWriter words) {
    return of(panel, advised, "practice-result.spot.foretold.several", words);
  }

  private static List<String> of(
      PanelOutline panel, List<NextPlace> advised, String foretold, PhraseWriter words) {
    List<Place> places = FurtherPlaces.of(panel, advised);
    List<String> said = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      said.add(said(places.get(i), advised.get(i), foretold, words));
    }
    return said;
  }

  private static String said(Place place, NextPlace spot, String foretold, PhraseWriter words) {
    return spot.ifSo() == null || spot.ifNot() == null
        ? said(place, words)
        : words.say(
            foretold,
            PanelOutline.nameOf(place.number()),
            words.spot(place.x()),
            words.spot(place.y()),
            words.quantity(spot.ifSo(), Dimension.FILM),
            words.quantity(spot.ifNot(), Dimension.FILM));
  }

  /** Where a place is. */
  static String said(Place place, PhraseWriter words) {
    return words.say(
        "practice-result.spot",
        PanelOutline.nameOf(place.number()),
        words.spot(place.x()),
        words.spot(place.y()));
  }
}
