package lapline.trade.spray;

import java.util.Arrays;

/**
 * The profile that an upright fan leaves when the gun is heeled: the same paint per ray, spread
 * over the tilted fan's footprint, thin at the far end.
 *
 * <p>A ray at angle φ in the fan meets the panel at γ = φ + tilt; the stroke's film changes by
 * cos²γ / cos²φ (the paint of dφ falls on height · dφ / cos²γ). No paint is lost.
 *
 * @param upright as the gun would leave it held square
 * @param heel how far it is tilted
 */
public record HeeledProfile(FanProfile upright, Heel heel) implements FanProfile {
  private static final int STEPS = 512;

  @Override
  public double at(double u) {
    if (!(Math.abs(u) <= 1)) {
      return 0;
    }
    double near = heel.nearReach();
    double gamma = Math.atan(near + (u + 1) / 2 * (heel.farReach() - near));
    double phi = gamma - heel.tilt();
    double inUpright = Math.tan(phi) / Math.tan(heel.halfFan());
    double spread = Math.cos(gamma) / Math.cos(phi);
    // rounding may put the fan's own ends a hair outside it
    double within = Math.max(-1, Math.min(1, inUpright));
    return upright.at(within) * spread * spread * heel.widthRatio();
  }

  @Override
  public double[] corners() {
    double near = heel.nearReach();
    double width = heel.farReach() - near;
    return Arrays.stream(upright.corners())
        .map(v -> Math.tan(Math.atan(v * Math.tan(heel.halfFan())) + heel.tilt()))
        .map(reach -> 2 * (reach - near) / width - 1)
        .toArray();
  }

  /** Found on 513 even steps; within 1e-4 of the true peak for smooth profiles. */
  @Override
  public double peak() {
    double peak = 0;
    for (int i = 0; i <= STEPS; i++) {
      peak = Math.max(peak, at(2.0 * i / STEPS - 1));
    }
    return peak;
  }
}
