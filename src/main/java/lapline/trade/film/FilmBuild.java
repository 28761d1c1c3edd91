package lapline.trade.film;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Valid;

/**
 * The film that a coat added at a place: the gauge reading after it less the one before.
 *
 * <p>May come out below 0 where the coat is thinner than the gauge can tell; what is too far below
 * to be true is for {@link #isPossible} to say.
 */
public final class FilmBuild {
  private FilmBuild() {}

  /**
   * Build in metres, the two readings independent.
   *
   * @param before whole film before the coat, metres, 0 or more
   * @param after whole film after it, same place, metres, 0 or more
   */
  public static Estimate of(Estimate before, Estimate after) {
    return of(before, after, 0);
  }

  /**
   * Build in metres when part of the gauge's error is the same in both readings and cancels.
   *
   * <p>u² = u₁² + u₂² − 2 r u₁ u₂. Source: JCGM 100:2008 (16), number from memory.
   *
   * @param correlation r of the two readings' errors, −1 to 1; 1 where all of the error is shared
   */
  public static Estimate of(Estimate before, Estimate after, double correlation) {
    Valid.notNegative("before", before.value());
    Valid.notNegative("after", after.value());
    Valid.between("correlation", correlation, -1, 1);
    Estimate apart = Gum.difference(after, before);
    double shared = 2 * correlation * before.standardUncertainty() * after.standardUncertainty();
    double variance = Math.pow(apart.standardUncertainty(), 2) - shared;
    return new Estimate(apart.value(), Math.sqrt(Math.max(0, variance)), apart.degreesOfFreedom());
  }

  /** Whether a build can be true: not below 0 by more than three standard uncertainties. */
  public static boolean isPossible(Estimate build) {
    return build.value() >= -3 * build.standardUncertainty();
  }
}
