package lapline.practice.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lapline.trade.measure.Dimension;

/**
 * All computed quantities; a scoring rule is one entry here, with the least and the most it can be
 * in SI and what it is taken from, and one test.
 */
public final class PanelQuantities {
  /** Film laid on at each place, whose target the share and the acceptance plans refer to. */
  public static final String FILM = "film-build";

  /** Share of the panel's area with its film inside that target. */
  public static final String FILM_SHARE = "film-share";

  /** All that is taken from the dry film of the panel's places. */
  public static final Set<String> OF_DRY_FILM = Set.of(FILM, FILM_SHARE, "film-plan", "film-spots");

  public static final String OVERLAP = "overlap";

  /** Rules that are kept or broken, and never nearly kept. */
  public static final Set<String> RULES = Set.of("film-plan", "film-spots");

  private static final String[] BEFORE_AND_AFTER = {"film-before", "film-after"};

  private static final Map<String, PanelQuantity> BY_ID = new LinkedHashMap<>();

  static {
    List.of(
            new PanelQuantity(
                    "distance-mean", Dimension.LENGTH, 0.01, 0.6, GunQuantities::distanceMean)
                .from("distance-start", "distance-middle", "distance-end")
                .like("distance-middle", "distance-start", "distance-end"),
            new PanelQuantity(
                    "distance-drift", Dimension.LENGTH, -0.5, 0.5, GunQuantities::distanceDrift)
                .from("distance-start", "distance-end"),
            new PanelQuantity("stroke-speed", Dimension.SPEED, 0.01, 5, GunQuantities::strokeSpeed)
                .from("stroke-time"),
            new PanelQuantity(OVERLAP, Dimension.SHARE, 0, 1, GunQuantities::overlap)
                .from("pass-spacing", "fan-width"),
            new PanelQuantity("flash-time", Dimension.DURATION, 0, 43200, FlashTimes::of)
                .from("flash")
                .like("flash"),
            new PanelQuantity("mix-ratio", Dimension.SHARE, -1, 1, MixQuantities::ratio)
                .from("mix-amount"),
            new PanelQuantity(
                    "dew-margin",
                    Dimension.TEMPERATURE_DIFFERENCE,
                    0,
                    50,
                    ClimateQuantities::dewMargin)
                .from("panel-temperature", "air-temperature", "humidity"),
            new PanelQuantity("wet-film-mean", Dimension.FILM, 1e-6, 1e-3, FilmQuantities::wetFilm)
                .from("wet-film")
                .like("wet-film"),
            new PanelQuantity(FILM, Dimension.FILM, 1e-6, 1e-3, FilmQuantities::filmBuild)
                .from(BEFORE_AND_AFTER),
            new PanelQuantity(FILM_SHARE, Dimension.SHARE, 0, 1, FilmQuantities::filmShare)
                .from(BEFORE_AND_AFTER),
            new PanelQuantity("film-plan", Dimension.CHOICE, 0, 1, FilmQuantities::filmPlan)
                .from(BEFORE_AND_AFTER),
            new PanelQuantity("film-spots", Dimension.CHOICE, 0, 1, FilmQuantities::filmSpots)
                .from(BEFORE_AND_AFTER),
            new PanelQuantity("coats-to-hiding", Dimension.NUMBER, 1, 20, HidingQuantities::coats)
                .from("squares-seen", "luminance-black", "luminance-white"),
            new PanelQuantity("blend-room", Dimension.LENGTH, 0, 2, BlendQuantities::room)
                .from("step-out"),
            new PanelQuantity("step-out-order", Dimension.LENGTH, -2, 2, BlendQuantities::steps)
                .from("step-out"),
            new PanelQuantity("final-grit", Dimension.GRIT, 40, 5000, SandingQuantities::finalGrit)
                .from("grit"),
            new PanelQuantity(
                    "grit-step", Dimension.NUMBER, 0, 5000, SandingQuantities::largestStep)
                .from("grit"))
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
