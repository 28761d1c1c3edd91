package lapline.trade.film;

import java.util.List;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Summary;
import lapline.trade.measure.Valid;

/**
 * Gauge readings of one film in metres, as they stand on the record.
 *
 * @param metres at least one; finite. A build may be a little below 0.
 */
public record FilmReadings(List<Double> metres) {

  public FilmReadings {
    if (metres.isEmpty()) {
      throw new MeasureException("number of readings", 0, "1 or more");
    }
    metres.forEach(m -> Valid.finite("reading", m));
    metres = List.copyOf(metres);
  }

  /** How many there are. */
  public int count() {
    return metres.size();
  }

  /** Metres. */
  public double mean() {
    return summary().mean();
  }

  /** Sample standard deviation, n − 1, metres; 0 for one reading. */
  public double spread() {
    return summary().standardDeviation();
  }

  /** Lowest of them, metres. */
  public double least() {
    return summary().least();
  }

  /** Highest of them, metres. */
  public double most() {
    return summary().most();
  }

  /** All of that at once, for who needs several. */
  Summary summary() {
    return Summary.of(metres.stream().mapToDouble(m -> m).toArray());
  }

  /**
   * The same readings less a correction, such as that for a blasted profile.
   *
   * @param correction metres, finite
   */
  public FilmReadings less(double correction) {
    Valid.finite("correction", correction);
    return new FilmReadings(metres.stream().map(m -> m - correction).toList());
  }
}
