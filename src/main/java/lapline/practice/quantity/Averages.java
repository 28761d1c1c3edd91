package lapline.practice.quantity;

import java.util.List;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;

/** Means over places, coats or passes with what is not known of them. */
public final class Averages {
  private Averages() {}

  /** Mean of readings at several places. */
  static Estimate overPlaces(List<Reading> readings) {
    return of(readings.stream().map(Recorded::estimate).toList());
  }

  /**
   * Mean of several values of one quantity. Its uncertainty joins the scatter of the values over √n
   * (type A, n − 1 degrees of freedom) with the instrument's, half of which is taken as common to
   * all readings and so not lessened by their number (common practice, no source; the other half is
   * already in the scatter).
   *
   * @param values one or more
   */
  public static Estimate of(List<Estimate> values) {
    if (values.size() == 1) {
      return values.get(0);
    }
    double instrument =
        values.stream().mapToDouble(Estimate::standardUncertainty).average().orElse(0) / 2;
    return Gum.mean(values.stream().mapToDouble(Estimate::value).toArray(), instrument);
  }
}
