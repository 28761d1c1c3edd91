package lapline.trade.hiding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.Valid;

/**
 * What a paint scatters and absorbs per thickness, from one dry film of it over black and over
 * white; hence the film that hides.
 *
 * <p>Reflectances are internal ones, see {@link GlossSurface}; the black is taken as ideal, which a
 * card of 1 % nearly is. Best from a film that half hides: near full hiding both readings are alike
 * and say little. Not for metallics. Sources: as {@link KubelkaMunk}. Uncertainty to first order,
 * readings independent; simulated in the tests: 94 to 96 % at 95 % for readings sure to 1 % of
 * themselves.
 *
 * @param overBlack reflectance over black, more than 0, at most 1
 * @param overWhite reflectance over white, at least that over black
 * @param white reflectance of the bare white, more than 0, at most 1
 * @param dryFilm metres, more than 0
 */
public record TwoConstants(
    Estimate overBlack, Estimate overWhite, Estimate white, Estimate dryFilm) {
  /** Step of the slopes, relative to the reading. */
  private static final double STEP = 1e-5;

  public TwoConstants {
    Valid.positive("dryFilm", dryFilm.value());
    KubelkaMunk paint = KubelkaMunk.ofPair(overBlack.value(), overWhite.value(), white.value());
    paint.sxFrom(overBlack.value());
  }

  /** Reflectivity R∞ of a film too thick to see through, 0 to 1. */
  public Estimate reflectivity() {
    return of(r -> r.paint().reflectivity());
  }

  /** Scattering coefficient S, per metre of dry film. */
  public Estimate scattering() {
    return of(Readings::scattering);
  }

  /** Absorption coefficient K, per metre of dry film. */
  public Estimate absorption() {
    return of(r -> r.paint().absorption() * r.scattering());
  }

  /**
   * Dry film at a contrast over black and this white, metres.
   *
   * @param contrast 0.01 to 0.999; 0.98 for hiding
   */
  public Estimate filmAtContrast(double contrast) {
    Valid.between("contrast", contrast, 0.01, 0.999);
    return of(r -> r.paint().sxAtContrast(contrast, r.white()) / r.scattering());
  }

  /** Dry film that hides, metres. */
  public Estimate filmThatHides() {
    return filmAtContrast(ContrastRatio.HIDING);
  }

  /**
   * Area that a volume of ready-to-spray paint hides, m²/m³, nothing lost (1000 m²/m³ is 1 m²/L).
   *
   * @param volumeSolids share of the paint, more than 0, at most 1
   */
  public Estimate spreadingAtHiding(double volumeSolids) {
    Valid.share("volumeSolids", volumeSolids);
    return Gum.ratio(Estimate.of(volumeSolids, 0), filmThatHides());
  }

  /**
   * Coats to hiding at the film that a coat builds.
   *
   * @param dryPerCoat metres, more than 0
   */
  public CoatsToHiding coatsToHiding(Estimate dryPerCoat) {
    Valid.positive("dryPerCoat", dryPerCoat.value());
    return new CoatsToHiding.Computed(Gum.ratio(filmThatHides(), dryPerCoat));
  }

  /** The four values alone. */
  private record Readings(double black, double overWhite, double white, double film) {
    KubelkaMunk paint() {
      return KubelkaMunk.ofPair(black, overWhite, white);
    }

    double scattering() {
      return paint().sxFrom(black) / film;
    }

    Readings with(int which, double value) {
      return new Readings(
          which == 0 ? value : black,
          which == 1 ? value : overWhite,
          which == 2 ? value : white,
          which == 3 ? value : film);
    }
  }

  /** A computed value, its slopes taken over a hair of each reading. */
  private Estimate of(ToDoubleFunction<Readings> formula) {
    List<Estimate> inputs = List.of(overBlack, overWhite, white, dryFilm);
    Readings here =
        new Readings(overBlack.value(), overWhite.value(), white.value(), dryFilm.value());
    double value = formula.applyAsDouble(here);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      Estimate input = inputs.get(i);
      if (input.standardUncertainty() > 0) {
        // downwards for the two that must stay below others or 1, upwards for the rest: one-sided
        double moved = input.value() * (i == 0 || i == 2 ? 1 - STEP : 1 + STEP);
        double slope =
            (formula.applyAsDouble(here.with(i, moved)) - value) / (moved - input.value());
        parts.add(new Part(slope, input));
      }
    }
    return Gum.combine(value, parts);
  }
}
