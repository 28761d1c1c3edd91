package lapline.practice.pages;

import java.util.List;
import lapline.practice.FilmField;
import lapline.practice.PanelOutline;

/**
 * The readings that a panel sprayed again is held against. One that fits nothing around it is shown
 * as such, and neither stretches a scale nor counts as scatter.
 */
final class SprayedPlaces {
  private final FilmField film;

  /**
   * @param film with the upper end of its target
   */
  SprayedPlaces(FilmField film) {
    this.film = film;
  }

  /**
   * A reading as the script draws it; all in metres.
   *
   * @param aside whether it is set aside
   */
  record Place(double x, double y, double film, boolean aside) {}

  List<Place> drawn() {
    return film.places().stream()
        .map(p -> new Place(p.x(), p.y(), p.film(), film.isSetAside(p)))
        .toList();
  }

  /** What a cut through the film has to have room for: the range and the readings that count. */
  double highest() {
    return film.counted().stream()
        .mapToDouble(FilmField.PlaceFilm::film)
        .reduce(film.target().most(), Math::max);
  }

  /** Mean standard uncertainty of a reading, metres; it grows with the reading. */
  double uncertainty() {
    return film.counted().stream()
        .mapToDouble(FilmField.PlaceFilm::standardUncertainty)
        .average()
        .orElse(0);
  }

  /** Which places are set aside, as a sentence; empty where none is. */
  String setAside(PhraseWriter words) {
    List<Integer> aside = film.setAside();
    return aside.isEmpty()
        ? ""
        : words.say("panel-what-if.set-aside", aside.size(), PanelOutline.namesOf(aside));
  }

  /** Invites to read them again first. */
  String readAgain(PhraseWriter words) {
    return words.say("panel-what-if.set-aside.again", film.setAside().size());
  }

  /** What the map of the differences shows. */
  String off(PhraseWriter words) {
    return words.say(film.setAside().isEmpty() ? "panel-what-if.off" : "panel-what-if.off.aside");
  }
}
