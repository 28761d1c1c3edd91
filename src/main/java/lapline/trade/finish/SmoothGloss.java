package lapline.trade.finish;

import lapline.trade.measure.Valid;

/**
 * The gloss that a perfectly smooth film would read: the most its refractive index allows.
 *
 * <p>Fresnel reflectance of unpolarised light, against black glass of index 1.567, which is 100
 * gloss units at every angle. Source: ISO 2813:2014; glass index at 587.6 nm. Real films read less.
 *
 * @param index refractive index of the film, 1 to 3; clear coats lie near 1.5
 */
public record SmoothGloss(double index) {
  /** The polished black glass that defines 100 gloss units. */
  public static final SmoothGloss STANDARD_GLASS = new SmoothGloss(1.567);

  public SmoothGloss {
    Valid.between("index", index, 1, 3);
  }

  /** Share of unpolarised light reflected, 0 to 1; Fresnel's formulas, exact to rounding. */
  public double reflectance(GlossAngle angle) {
    double in = angle.radians();
    double through = Math.asin(Math.sin(in) / index);
    double across = Math.sin(in - through) / Math.sin(in + through);
    double along = Math.tan(in - through) / Math.tan(in + through);
    return (across * across + along * along) / 2;
  }

  /** Gloss units; rises with the index for all films there are (1.3 to 1.6). */
  public double gloss(GlossAngle angle) {
    return 100 * reflectance(angle) / STANDARD_GLASS.reflectance(angle);
  }
}
