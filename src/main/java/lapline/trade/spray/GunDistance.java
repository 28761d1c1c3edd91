package lapline.trade.spray;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.Valid;

/**
 * How the gun's distance from the panel runs along one stroke, from readings at its start, middle
 * and end; all in metres.
 *
 * @param mean of the three readings
 * @param drift end less start: positive where the gun moves away
 * @param bow mean of the two ends less the middle: positive where the gun swings in an arc
 */
public record GunDistance(Estimate mean, Estimate drift, Estimate bow) {

  /**
   * Uncertainty to first order, readings independent.
   *
   * @param start metres, more than 0, as are the others
   * @throws lapline.trade.measure.MeasureException for a distance that is not
   */
  public static GunDistance along(Estimate start, Estimate middle, Estimate end) {
    return new GunDistance(
        weighted(1 / 3.0, start, 1 / 3.0, middle, 1 / 3.0, end),
        weighted(-1, start, 0, middle, 1, end),
        weighted(0.5, start, -1, middle, 0.5, end));
  }

  private static Estimate weighted(
      double a, Estimate start, double b, Estimate middle, double c, Estimate end) {
    double value =
        a * Valid.positive("start", start.value())
            + b * Valid.positive("middle", middle.value())
            + c * Valid.positive("end", end.value());
    return Gum.combine(value, List.of(new Part(a, start), new Part(b, middle), new Part(c, end)));
  }
}
