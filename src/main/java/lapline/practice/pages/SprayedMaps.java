package lapline.practice.pages;

import java.util.List;
import java.util.stream.IntStream;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.LightnessScale;
import lapline.pages.drawing.SvgWriter;
import lapline.pages.drawing.Tone;
import lapline.practice.FilmField;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Dimension;

/**
 * What the map of a panel sprayed again is held against: the map of what was read, and the legend
 * of both. One scale for all, wide enough for what sliders make of a film.
 */
final class SprayedMaps {
  private static final double WIDTH = 100;
  private static final int STEPS = 24;

  // beyond these ends of the range every film looks alike; course choice
  private static final double UNDER = 0.6;
  private static final double OVER = 1.3;

  private final PanelOutline panel;
  private final FilmField film;
  private final PhraseWriter words;

  /**
   * @param film with both ends of its target
   */
  SprayedMaps(PanelOutline panel, FilmField film, PhraseWriter words) {
    this.panel = panel;
    this.film = film;
    this.words = words;
  }

  /**
   * The shades of a map, evenly from the thinnest film to the thickest.
   *
   * @param thinnest metres, as is {@code thickest}
   */
  record Scale(double thinnest, double thickest, List<String> tones) {}

  Scale scale() {
    double thinnest = UNDER * film.target().least();
    double thickest = OVER * film.target().most();
    for (FilmField.PlaceFilm place : film.counted()) {
      thinnest = Math.min(thinnest, place.film());
      thickest = Math.max(thickest, place.film());
    }
    return new Scale(thinnest, thickest, tones());
  }

  private static List<String> tones() {
    return IntStream.range(0, STEPS)
        .mapToObj(i -> LightnessScale.at(i / (STEPS - 1.0)))
        .map(Tone::hex)
        .toList();
  }

  /** The result page's map in this scale. */
  String measured() {
    Scale scale = scale();
    PanelMap map = new PanelMap(panel, film, words).over(scale.thinnest(), scale.thickest());
    return SvgWriter.write(map.drawing());
  }

  String legend() {
    Scale scale = scale();
    FilmLegend legend = new FilmLegend(film.target(), scale.thinnest(), scale.thickest(), words);
    return SvgWriter.write(
        new Drawing(
            "film-legend",
            WIDTH,
            FilmLegend.HEIGHT,
            words.say("drawing.film-legend.title"),
            words.say(
                "drawing.film-legend.description", words.range(film.target(), Dimension.FILM)),
            legend.shapes(1, 1, WIDTH - 2)));
  }
}
