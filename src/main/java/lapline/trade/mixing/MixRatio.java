package lapline.trade.mixing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Parts of a ready-to-spray mix by volume, such as 4 : 1 : 1 of clear, hardener and reducer.
 *
 * @param parts at least one, each more than 0
 */
public record MixRatio(List<Double> parts) {

  public MixRatio {
    if (parts.isEmpty()) {
      throw new MeasureException("number of parts", 0, "1 or more");
    }
    parts.forEach(p -> Valid.positive("part", p));
    parts = List.copyOf(parts);
  }

  public static MixRatio of(double... parts) {
    return new MixRatio(Arrays.stream(parts).boxed().toList());
  }

  /** What the percentage of an additive is taken of; data sheets differ. */
  public enum AdditiveOf {
    /** The sum of the parts before it. */
    SUM,
    /** The first part alone. */
    FIRST_PART
  }

  /**
   * This mix with an additive as its last part, such as 2 : 1 + 10 %.
   *
   * @param share of what it is taken of, more than 0: 0.10 for 10 %
   */
  public MixRatio plus(double share, AdditiveOf of) {
    double base = of == AdditiveOf.SUM ? sum() : parts.get(0);
    double additive = Valid.positive("share", share) * base;
    return new MixRatio(
        DoubleStream.concat(parts.stream().mapToDouble(p -> p), DoubleStream.of(additive))
            .boxed()
            .toList());
  }

  private double sum() {
    return parts.stream().mapToDouble(p -> p).sum();
  }

  /** Share of the whole volume that a part makes, counted from 0. */
  public double share(int part) {
    return parts.get(part) / sum();
  }

  /**
   * Volume of each part.
   *
   * @param total more than 0, any unit of volume
   */
  public List<Double> volumes(double total) {
    Valid.positive("total", total);
    return parts.stream().map(p -> total * p / sum()).toList();
  }
}
