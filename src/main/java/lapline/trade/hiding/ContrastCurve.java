package lapline.trade.hiding;

import java.util.List;
import java.util.stream.IntStream;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What contrast readings coat by coat say of how many coats hide: at a whole number of coats the
 * reading after that coat itself; in between, ln(1 − C) straight between its two neighbours; beyond
 * the last coat, the last two drawn on.
 *
 * @param contrast of the bare card, then after coat 1, 2, …; 0 or more, two at least
 * @param mark contrast that counts as hiding, more than 0, below 1
 */
public record ContrastCurve(List<Estimate> contrast, double mark) {
  private static final int NODES = 100;

  /** The middles of parts of the normal distribution that are equally likely. */
  private static final double[] NORMAL =
      IntStream.range(0, NODES)
          .mapToDouble(
              i -> NormalDistribution.of(0, 1).inverseCumulativeProbability((i + 0.5) / NODES))
          .toArray();

  private static final int FURTHEST = 3;

  /** How exactly a number of coats is searched for. */
  private static final double FINE = 1e-7;

  /** Nothing nearer to full hiding can be told from its contrast. */
  static final double LEAST_MISSING = 1e-3;

  public ContrastCurve {
    if (contrast.size() < 2) {
      throw new MeasureException("coats looked at", contrast.size() - 1.0, "1 or more");
    }
    contrast.forEach(c -> Valid.notNegative("contrast", c.value()));
    Valid.between("mark", mark, 0.01, 1 - LEAST_MISSING);
    contrast = List.copyOf(contrast);
  }

  /** The number of coats looked at. */
  int last() {
    return contrast.size() - 1;
  }

  /**
   * The probability that so many coats hide, from what is known of the contrast there. A later coat
   * through which the card shows again takes an earlier one's word away. Good for whole numbers and
   * from the second coat on; within the first two the line in between may be off by more than the
   * readings are, which {@link CoatsToHiding.Crossed#interval} leaves out.
   *
   * @param coats 0 or more, parts of a coat counted
   * @return 0 to 1
   */
  public double hiddenBy(double coats) {
    Valid.notNegative("coats", coats);
    int last = last();
    if (coats > last) {
      // more coats never hide less, however unsure the line beyond the last one is
      return Math.max(at(last), between(coats, last - 1));
    }
    double hidden = 1;
    for (int later = (int) Math.ceil(coats); later <= last; later++) {
      hidden = Math.min(hidden, at(later));
    }
    boolean whole = coats == Math.rint(coats);
    return whole ? hidden : Math.min(hidden, between(coats, (int) coats));
  }

  private double at(int coat) {
    return Conformance.probability(contrast.get(coat), TargetRange.atLeast(mark));
  }

  /** For whatever the left reading may truly be, how surely the right one is high enough. */
  private double between(double coats, int left) {
    Estimate from = contrast.get(left);
    Estimate to = contrast.get(left + 1);
    double along = coats - left;
    double sum = 0;
    for (double z : NORMAL) {
      double atLeft = missing(from.value() + z * from.standardUncertainty());
      double most = Math.pow((1 - mark) * Math.pow(atLeft, along - 1), 1 / along);
      sum += most < LEAST_MISSING ? 0 : reaches(to, 1 - most);
    }
    return sum / NODES;
  }

  private static double reaches(Estimate contrast, double wanted) {
    return Conformance.probability(contrast, TargetRange.atLeast(wanted));
  }

  static double missing(double contrast) {
    return Math.max(LEAST_MISSING, 1 - contrast);
  }

  /**
   * The number of coats, parts counted, that hides with this probability, from 0 to three times as
   * many as the bare card and the coats that were looked at; the end of that range where it is not
   * reached within.
   *
   * @param probability 0.001 to 0.999
   */
  public double coatsAt(double probability) {
    Valid.between("probability", probability, 0.001, 0.999);
    double few = 0;
    double many = FURTHEST * contrast.size();
    while (many - few > FINE) {
      double coats = (few + many) / 2;
      if (hiddenBy(coats) < probability) {
        few = coats;
      } else {
        many = coats;
      }
    }
    return (few + many) / 2;
  }
}
