package lapline.trade.hiding;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * How a paint's reflectance grows with its film: the closed forms of Kubelka and Munk for one
 * wavelength or for luminance.
 *
 * <p>Thickness enters as S·X, scattering coefficient times film, a pure number. Reflectances are
 * internal ones; readings of glossy films want the surface taken off first. Not for metallics.
 * Sources: Kubelka and Munk, Z. techn. Physik 12:593, 1931; Kubelka, J. Opt. Soc. Am. 38:448, 1948;
 * from memory. Accuracy: double arithmetic; thickness at a contrast to 1e-10.
 *
 * @param reflectivity R∞ of a film too thick to see through, more than 0, at most 1 (no absorption)
 */
public record KubelkaMunk(double reflectivity) {

  public KubelkaMunk {
    Valid.share("reflectivity", reflectivity);
  }

  /**
   * The paint of one film read over black and over another backing.
   *
   * @param overBlack reflectance over ideal black, more than 0, at most 1
   * @param overBacking reflectance over the backing, at least that over black, at most 1
   * @param backing its own reflectance, more than 0, at most 1
   * @throws MeasureException for readings that no one film can give
   */
  public static KubelkaMunk ofPair(double overBlack, double overBacking, double backing) {
    Valid.share("overBlack", overBlack);
    Valid.share("overBacking", overBacking);
    Valid.share("backing", backing);
    if (overBacking < overBlack) {
      throw new MeasureException("overBacking", overBacking, "at least that over black");
    }
    double a = (overBacking + (overBlack - overBacking + backing) / (overBlack * backing)) / 2;
    if (!(a >= 1)) {
      throw new MeasureException(
          "overBacking", overBacking, "a reflectance that one film can have");
    }
    return new KubelkaMunk(a - Math.sqrt(a * a - 1));
  }

  /** Absorption over scattering, K/S. */
  public double absorption() {
    return (1 - reflectivity) * (1 - reflectivity) / (2 * reflectivity);
  }

  private double a() {
    return (1 / reflectivity + reflectivity) / 2;
  }

  private double b() {
    return (1 / reflectivity - reflectivity) / 2;
  }

  /** b coth(b·sx), and its limit 1/sx where nothing is absorbed. */
  private double bCoth(double sx) {
    return b() == 0 ? 1 / sx : b() / Math.tanh(b() * sx);
  }

  /**
   * Reflectance over ideal black.
   *
   * @param sx scattering times film, 0 or more
   */
  public double overBlack(double sx) {
    return Valid.notNegative("sx", sx) == 0 ? 0 : 1 / (a() + bCoth(sx));
  }

  /**
   * Reflectance over a backing.
   *
   * @param sx scattering times film, 0 or more
   * @param backing its reflectance, 0 to 1
   */
  public double over(double backing, double sx) {
    Valid.between("backing", backing, 0, 1);
    if (Valid.notNegative("sx", sx) == 0) {
      return backing;
    }
    double coth = bCoth(sx);
    return (1 - backing * (a() - coth)) / (a() - backing + coth);
  }

  /**
   * Share of light that the film lets through, for one way; 1 for no film, 0 for a thick one.
   *
   * @param sx scattering times film, 0 or more
   */
  public double transmittance(double sx) {
    Valid.notNegative("sx", sx);
    return b() == 0 ? 1 / (1 + sx) : b() / (a() * Math.sinh(b() * sx) + b() * Math.cosh(b() * sx));
  }

  /**
   * Scattering times film from the reflectance over black.
   *
   * @param overBlack 0 to below the reflectivity
   */
  public double sxFrom(double overBlack) {
    if (!(overBlack >= 0 && overBlack < reflectivity)) {
      throw new MeasureException("overBlack", overBlack, "0 to below " + reflectivity);
    }
    if (b() == 0) {
      return overBlack / (1 - overBlack);
    }
    double coth = (1 - a() * overBlack) / (b() * overBlack);
    return Math.log((coth + 1) / (coth - 1)) / (2 * b());
  }

  /**
   * Contrast over black and a white backing; 0 for no film, towards 1 for a thick one.
   *
   * @param white reflectance of the white, more than 0, at most 1
   * @param sx scattering times film, 0 or more
   */
  public double contrast(double white, double sx) {
    return overBlack(sx) / over(Valid.share("white", white), sx);
  }

  /**
   * Scattering times film at which a contrast is reached.
   *
   * @param contrast more than 0, below 1; 0.98 for hiding
   * @param white reflectance of the white backing, more than 0, at most 1
   */
  public double sxAtContrast(double contrast, double white) {
    Valid.between("contrast", contrast, Double.MIN_VALUE, Math.nextDown(1));
    double thick = 1;
    while (contrast(white, thick) < contrast) {
      thick = 2 * Valid.between("contrast", thick, 0, 1e9);
    }
    return new BrentSolver(1e-12, 1e-12).solve(200, sx -> contrast(white, sx) - contrast, 0, thick);
  }

  /**
   * Whole coats to hiding.
   *
   * @param sxPerCoat scattering times dry film of one coat, more than 0
   * @param white reflectance of the white backing, more than 0, at most 1
   */
  public int coatsToHiding(double sxPerCoat, double white) {
    Valid.positive("sxPerCoat", sxPerCoat);
    return (int) Math.ceil(sxAtContrast(ContrastRatio.HIDING, white) / sxPerCoat);
  }
}
