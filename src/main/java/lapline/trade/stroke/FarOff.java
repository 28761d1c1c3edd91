package lapline.trade.stroke;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Readings that lie far off all others. One that is three times the rest bends every fit that has
 * it in, so that it is not seen as a stray any more and other passes are made up for it; it has to
 * be set aside before anything is fitted, to see what the others say.
 */
final class FarOff {
  /** So many times as far from the middle reading as the next one. */
  private static final double ALONE = 2;

  private FarOff() {}

  /**
   * As many readings as lie that far off, by their number from 0.
   *
   * @param most of them
   */
  static List<Integer> among(List<FilmAt> readings, int most) {
    double middle = median(readings.stream().mapToDouble(FilmAt::film).sorted().toArray());
    double[] off = readings.stream().mapToDouble(r -> Math.abs(r.film() - middle)).toArray();
    List<Integer> farthestFirst =
        IntStream.range(0, off.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -off[i]))
            .toList();
    return IntStream.rangeClosed(1, Math.min(most, off.length - 1))
        .filter(k -> off[farthestFirst.get(k - 1)] > ALONE * off[farthestFirst.get(k)])
        .max()
        .stream()
        .boxed()
        .flatMap(k -> farthestFirst.subList(0, k).stream())
        .toList();
  }

  private static double median(double[] rising) {
    int half = rising.length / 2;
    return rising.length % 2 == 1 ? rising[half] : (rising[half - 1] + rising[half]) / 2;
  }
}
