package lapline.trade.mixing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Parts of a ready-to-spray mix by volume, such as 4 : 1 : 1 of clear, hardener and reducer; as
 * many parts as the sheet has. Volumes are taken to add up, as data sheets take them.
 *
 * @param parts at least one, each more than 0, of any one unit of volume
 */
public record MixRatio(List<Double> parts) {

  public MixRatio {
    if (parts.isEmpty()) {
      throw new MeasureException("number of parts", 0, "1 or more");
    }
    parts.forEach(p -> Valid.positive("part", p));
    parts = List.copyOf(parts);
  }

  /** A ratio as it is said: {@code of(4, 1, 1)}; of such parts as the record takes. */
  public static MixRatio of(double... parts) {
    return new MixRatio(Arrays.stream(parts).boxed().toList());
  }

  /**
   * The ratio by volume of a sheet that gives it by weight, such as 100 : 50 by weight.
   *
   * @param masses parts by weight, each more than 0, any one unit
   * @param densities of the parts, kg/m³ or any one unit, each more than 0, as many as parts
   */
  public static MixRatio byWeight(List<Double> masses, List<Double> densities) {
    if (masses.size() != densities.size()) {
      throw new MeasureException(
          "densities", densities.size(), "one for each of " + masses.size() + " parts");
    }
    return new MixRatio(
        IntStream.range(0, masses.size())
            .mapToObj(
                i ->
                    Valid.positive("mass", masses.get(i))
                        / Valid.positive("density", densities.get(i)))
            .toList());
  }

  /** What the percentage of an additive is taken of; data sheets differ, so it is always said. */
  public enum AdditiveOf {
    /** The sum of the parts before it: 2 : 1 + 10 % is 2 : 1 : 0.3. */
    SUM,
    /** The first part alone: 2 : 1 + 10 % is 2 : 1 : 0.2. */
    FIRST_PART,
    /** The finished mix, the additive included: 2 : 1 + 10 % is 2 : 1 : 1/3. */
    FINISHED_MIX
  }

  /**
   * This mix with an additive as its last part, such as 2 : 1 + 10 %.
   *
   * @param share of what it is taken of, more than 0: 0.10 for 10 %; below 1 of the finished mix
   */
  public MixRatio plus(double share, AdditiveOf of) {
    Valid.positive("share", share);
    double additive =
        switch (of) {
          case SUM -> share * sum();
          case FIRST_PART -> share * parts.get(0);
          case FINISHED_MIX ->
              share * sum() / (1 - Valid.between("share", share, 0, Math.nextDown(1.0)));
        };
    return new MixRatio(
        DoubleStream.concat(parts.stream().mapToDouble(p -> p), DoubleStream.of(additive))
            .boxed()
            .toList());
  }

  double sum() {
    return parts.stream().mapToDouble(p -> p).sum();
  }

  /**
   * Share of the whole volume that a part makes, 0 to 1.
   *
   * @param part counted from 0, below the number of parts
   */
  public double share(int part) {
    return parts.get(index(part)) / sum();
  }

  /** A part that there is, counted from 0. */
  int index(int part) {
    return (int) Valid.between("part number", part, 0, parts.size() - 1);
  }

  /**
   * Volume of each part, in the unit of the total.
   *
   * @param total more than 0, any unit of volume
   */
  public List<Double> volumes(double total) {
    Valid.positive("total", total);
    return parts.stream().map(p -> total * p / sum()).toList();
  }
}
