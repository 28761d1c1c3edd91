package lapline.practice.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lapline.trade.measure.Dimension;

/** All computed quantities; a scoring rule is one entry here and one test. */
public final class PanelQuantities {
  /** Film laid on at each place, whose target the share and the acceptance plans refer to. */
  public static final String FILM = "film-build";

  /** Share of the panel's area with its film inside that target. */
  public static final String FILM_SHARE = "film-share";

  private static final Map<String, PanelQuantity> BY_ID = new LinkedHashMap<>();

  static {
    List.of(
            new PanelQuantity("distance-mean", Dimension.LENGTH, GunQuantities::distanceMean),
            new PanelQuantity("distance-drift", Dimension.LENGTH, GunQuantities::distanceDrift),
            new PanelQuantity("stroke-speed", Dimension.SPEED, GunQuantities::strokeSpeed),
            new PanelQuantity("overlap", Dimension.SHARE, GunQuantities::overlap),
            new PanelQuantity("flash-time", Dimension.DURATION, FlashTimes::of),
            new PanelQuantity("mix-ratio", Dimension.SHARE, MixQuantities::ratio),
            new PanelQuantity(
                "dew-margin", Dimension.TEMPERATURE_DIFFERENCE, ClimateQuantities::dewMargin),
            new PanelQuantity("wet-film-mean", Dimension.FILM, FilmQuantities::wetFilm),
            new PanelQuantity(FILM, Dimension.FILM, FilmQuantities::filmBuild),
            new PanelQuantity(FILM_SHARE, Dimension.SHARE, FilmQuantities::filmShare),
            new PanelQuantity("film-plan", Dimension.CHOICE, FilmQuantities::filmPlan),
            new PanelQuantity("film-spots", Dimension.CHOICE, FilmQuantities::filmSpots),
            new PanelQuantity("coats-to-hiding", Dimension.NUMBER, HidingQuantities::coats),
            new PanelQuantity("blend-room", Dimension.LENGTH, BlendQuantities::room),
            new PanelQuantity("step-out-order", Dimension.LENGTH, BlendQuantities::steps),
            new PanelQuantity("final-grit", Dimension.GRIT, SandingQuantities::finalGrit),
            new PanelQuantity("grit-step", Dimension.NUMBER, SandingQuantities::largestStep))
        .forEach(q -> BY_ID.put(q.id(), q));
  }

  private PanelQuantities() {}

  public static Optional<PanelQuantity> find(String id) {
    return Optional.ofNullable(BY_ID.get(id));
  }

  public static Set<String> ids() {
    return BY_ID.keySet();
  }
}
