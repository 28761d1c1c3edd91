package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import lapline.content.Json;
import lapline.people.pages.Quantities;
import lapline.practice.FilmField;
import lapline.practice.PanelScore;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Limits;
import lapline.trade.measure.Unit;
import lapline.trade.stroke.StrokeFilm;

/**
 * A judged panel sprayed again with one thing changed. The page's script does the spraying with the
 * film that was kept with the score; nothing is judged here.
 */
@Named
@RequestScoped
public class PanelWhatIfPage {
  /** Per cent of the distance and the speed that were; beyond, nobody sprays a panel. */
  private static final int LEAST_OF_HAND = 50;

  private static final int MOST_OF_HAND = 200;

  private static final List<Slider> SLIDERS =
      List.of(
          new Slider("overlap", 0, 90, 1, 5),
          new Slider("distance", LEAST_OF_HAND, MOST_OF_HAND, 1, 10),
          new Slider("speed", LEAST_OF_HAND, MOST_OF_HAND, 1, 10),
          new Slider("arc", 0, 80, 1, 5),
          new Slider("coats", 1, 5, 1, 1));

  /** Of the film from spot to spot, metres; course assumption. */
  private static final double TEXTURE = 1e-6;

  @Inject private ResultPage result;
  @Inject private Quantities quantities;
  @Inject private Say say;

  /**
   * In per cent, but for the number of coats.
   *
   * @param press how far one press of the buttons beside it goes, for who cannot drag
   */
  public record Slider(String id, int least, int most, int step, int press) {
    public String getLabelKey() {
      return "panel-what-if.slider." + id;
    }
  }

  /**
   * What the script draws from; film and lengths in metres.
   *
   * @param limits least and most as the reader's words have them
   * @param highest what the cut has room for at the least
   * @param hand what each per cent of distance and speed is, from the sliders' least, in words
   */
  private record Data(
      StrokeFilm stroke,
      double least,
      double most,
      double highest,
      Limits limits,
      SprayedMaps.Scale scale,
      double scatter,
      FilmUnit unit,
      Map<String, List<String>> hand,
      List<SprayedPlaces.Place> places) {}

  /** A number of this unit is metres over its size. */
  private record FilmUnit(double size, int digits) {}

  private PanelScore score() {
    return result.getScore();
  }

  /** Whether there is a film to spray again. */
  public boolean isReadable() {
    FilmField film = score().film();
    return canRead(score()) && film.target().hasLeast() && film.target().hasMost();
  }

  /** Whether the film of a panel was read as a stroke. */
  static boolean canRead(PanelScore score) {
    return score.stroke() != null && score.film() != null;
  }

  public List<Slider> getSliders() {
    return SLIDERS;
  }

  public List<String> getRows() {
    return List.of("mean", "least", "most", "inside");
  }

  public String getUnit() {
    return quantities.unit(Dimension.FILM);
  }

  public String getRange() {
    return say.writer().range(score().film().target(), Dimension.FILM);
  }

  /** That the film drawn is not this panel's, before anybody moves a slider; empty where it is. */
  public String getWarning() {
    DrawnOff off = DrawnOff.of(score(), scatter(score().film()));
    PhraseWriter words = say.writer();
    return off.isAnotherFilm()
        ? words.say(
            off.noPattern() ? "panel-what-if.no-pattern" : "panel-what-if.far-off",
            words.quantity(off.half(), Dimension.FILM),
            words.quantity(off.byChance(), Dimension.FILM))
        : "";
  }

  private static double scatter(FilmField film) {
    return Math.hypot(new SprayedPlaces(film).uncertainty(), TEXTURE);
  }

  private SprayedMaps maps() {
    return new SprayedMaps(result.getTask().panel(), score().film(), say.writer());
  }

  private SprayedPlaces places() {
    return new SprayedPlaces(score().film());
  }

  /** That readings are left out of what is drawn; empty where none is. */
  public String getSetAside() {
    return places().setAside(say.writer());
  }

  public String getReadAgain() {
    return places().readAgain(say.writer());
  }

  /** What the map of the differences shows. */
  public String getOff() {
    return places().off(say.writer());
  }

  /** The map of what was read, as SVG. */
  public String getMeasured() {
    return maps().measured();
  }

  public String getLegend() {
    return maps().legend();
  }

  /** As JSON that cannot end the element it stands in. */
  public String getData() {
    FilmField film = score().film();
    Unit unit = Unit.preferred(Dimension.FILM, quantities.units());
    double size = unit.toSi(1);
    Data data =
        new Data(
            score().stroke(),
            film.target().least(),
            film.target().most(),
            places().highest(),
            say.writer().figures(film.target(), Dimension.FILM),
            maps().scale(),
            scatter(film),
            new FilmUnit(size, size > 1e-5 ? 2 : 0),
            new HandByPerCent(score(), say.writer()).from(LEAST_OF_HAND, MOST_OF_HAND),
            places().drawn());
    return Json.write(data).replace("<", "\\u003c");
  }
}
