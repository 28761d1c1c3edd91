package lapline.practice.quantity;

import java.util.List;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Summary;

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
    double[] numbers = values.stream().mapToDouble(Estimate::value).toArray();
    if (numbers.length == 1) {
      return values.get(0);
    }
    Summary s = Summary.of(numbers);
    double instrument =
        values.stream().mapToDouble(Estimate::standardUncertainty).average().orElse(0) / 2;
    double scatter = s.standardDeviation() / Math.sqrt(numbers.length);
    Estimate typeA = new Estimate(s.mean(), scatter, numbers.length - 1.0);
    return Gum.combine(
        s.mean(),
        List.of(new Gum.Part(1, typeA), new Gum.Part(1, Estimate.of(s.mean(), instrument))));
  }
}
