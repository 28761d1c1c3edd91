package lapline.trade.spray;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * A stroke profile read from a test pattern at even steps from one end of the fan to the other,
 * straight between the readings; it need not be symmetric.
 *
 * @param film film at each step relative to the mean; given in any one unit, 0 or more, at least 3,
 *     not all 0
 */
public record MeasuredProfile(List<Double> film) implements FanProfile {

  public MeasuredProfile {
    if (film.size() < 3) {
      throw new MeasureException("film readings", film.size(), "at least 3");
    }
    film.forEach(f -> Valid.notNegative("film", f));
    double mean = Valid.positive("mean film", trapezoidMean(film));
    film = film.stream().map(f -> f / mean).toList();
  }

  @Override
  public double at(double u) {
    if (!(Math.abs(u) <= 1)) {
      return 0;
    }
    double step = (u + 1) / 2 * (film.size() - 1);
    int left = Math.min((int) step, film.size() - 2);
    double share = step - left;
    return (1 - share) * film.get(left) + share * film.get(left + 1);
  }

  @Override
  public double[] corners() {
    return IntStream.range(0, film.size())
        .mapToDouble(i -> 2.0 * i / (film.size() - 1) - 1)
        .toArray();
  }

  @Override
  public double peak() {
    return Collections.max(film);
  }

  private static double trapezoidMean(List<Double> film) {
    double sum = film.stream().mapToDouble(f -> f).sum();
    return (sum - (film.get(0) + film.get(film.size() - 1)) / 2) / (film.size() - 1);
  }
}
