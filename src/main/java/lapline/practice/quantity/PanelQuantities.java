package lapline.practice.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lapline.trade.measure.Dimension;

/**
 * All computed quantities; a scoring rule is one entry here, with the least and the most it can be
 * in SI, and one test.
 */
public final class PanelQuantities {
  /** Film laid on at each place, whose target the share and the acceptance plans refer to. */
  public static final String FILM = "film-build";

  /** Share of the panel's area with its film inside that target. */
  public static final String FILM_SHARE = "film-share";

  private static final Map<String, PanelQuantity> BY_ID = new LinkedHashMap<>();

  static {
    List.of(
            new PanelQuantity(
                    "distance-mean", Dimension.LENGTH, 0.01, 0.6, GunQuantities::distanceMean)
                .like("distance-middle", "distance-start", "distance-end"),
            new PanelQuantity(
                "distance-drift", Dimension.LENGTH, -0.5, 0.5, GunQuantities::distanceDrift),
            new PanelQuantity("stroke-speed", Dimension.SPEED, 0.01, 5, GunQuantities::strokeSpeed),
            new PanelQuantity("overlap", Dimension.SHARE, 0, 1, GunQuantities::overlap),
            new PanelQuantity("flash-time", Dimension.DURATION, 0, 43200, FlashTimes::of)
                .like("flash"),
            new PanelQuantity("mix-ratio", Dimension.SHARE, -1, 1, MixQuantities::ratio),
            new PanelQuantity(
                "dew-margin",
                Dimension.TEMPERATURE_DIFFERENCE,
                0,
                50,
                ClimateQuantities::dewMargin),
            new PanelQuantity("wet-film-mean", Dimension.FILM, 1e-6, 1e-3, FilmQuantities::wetFilm)
                .like("wet-film"),
            new PanelQuantity(FILM, Dimension.FILM, 1e-6, 1e-3, FilmQuantities::filmBuild),
            new PanelQuantity(FILM_SHARE, Dimension.SHARE, 0, 1, FilmQuantities::filmShare),
            new PanelQuantity("film-plan", Dimension.CHOICE, 0, 1, FilmQuantities::filmPlan),
            new PanelQuantity("film-spots", Dimension.CHOICE, 0, 1, FilmQuantities::filmSpots),
            new PanelQuantity("coats-to-hiding", Dimension.NUMBER, 1, 20, HidingQuantities::coats),
            new PanelQuantity("blend-room", Dimension.LENGTH, 0, 2, BlendQuantities::room),
            new PanelQuantity("step-out-order", Dimension.LENGTH, -2, 2, BlendQuantities::steps),
            new PanelQuantity("final-grit", Dimension.GRIT, 40, 5000, SandingQuantities::finalGrit),
            new PanelQuantity(
                "grit-step", Dimension.NUMBER, 0, 5000, SandingQuantities::largestStep))
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
