package lapline.trade.hiding;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Valid;

/**
 * Coats to hiding from the contrast ratio after each coat.
 *
 * <p>What is missing to full hiding, 1 − C, falls by nearly the same factor with each like coat (by
 * Kubelka and Munk the light through the film and back falls so), hence ln(1 − C) is taken as
 * straight from coat to coat. The crossing is interpolated between the last coat below the mark and
 * the next; where the mark was not reached, the last two are drawn on by at most one coat.
 * Probabilities and intervals come from {@link ContrastCurve}. Accuracy of the interpolation
 * against the closed form: within 0.03 of a coat where four or more coats hide, 0.1 where two do.
 */
public final class ContrastByCoat {
  private ContrastByCoat() {}

  /**
   * To the usual mark, from a card whose black is taken as ideal.
   *
   * @param afterEachCoat contrast ratio after coat 1, 2, …; 0 or more, at least one coat
   */
  public static CoatsToHiding coatsToHiding(List<Estimate> afterEachCoat) {
    return coatsToHiding(Estimate.of(0, 0), afterEachCoat, ContrastRatio.HIDING);
  }

  /**
   * To any mark, from a card whose bare contrast was read too.
   *
   * @param bareCard contrast ratio before the first coat, 0 to below the mark
   * @param afterEachCoat contrast ratio after coat 1, 2, …; 0 or more, at least one coat
   * @param mark contrast that counts as hiding, 0.01 to 0.999
   */
  public static CoatsToHiding coatsToHiding(
      Estimate bareCard, List<Estimate> afterEachCoat, double mark) {
    ContrastCurve curve = curve(bareCard, afterEachCoat, mark);
    Valid.between("bareCard", bareCard.value(), 0, Math.nextDown(mark));
    int last = afterEachCoat.size();
    int below = lastBelow(afterEachCoat, mark);
    int from = Math.min(below, last - 1);
    Estimate left = from == 0 ? bareCard : afterEachCoat.get(from - 1);
    Estimate right = afterEachCoat.get(from);
    boolean rising = right.value() > left.value();
    double at = rising ? crossing(from, left, right, mark) : Double.POSITIVE_INFINITY;
    return at > last + 1
        ? new CoatsToHiding.NotReached(curve)
        : new CoatsToHiding.Crossed(at, curve);
  }

  private static ContrastCurve curve(Estimate bareCard, List<Estimate> afterEach, double mark) {
    return new ContrastCurve(Stream.concat(Stream.of(bareCard), afterEach.stream()).toList(), mark);
  }

  /** Number of the last coat below the mark; 0 for the bare card. */
  private static int lastBelow(List<Estimate> contrast, double mark) {
    int below = contrast.size();
    while (below > 0 && contrast.get(below - 1).value() >= mark) {
      below--;
    }
    return below;
  }

  private static double crossing(int from, Estimate left, Estimate right, double mark) {
    double atLeft = Math.log(missing(left));
    double atRight = Math.log(missing(right));
    return from + (atLeft - Math.log(1 - mark)) / (atLeft - atRight);
  }

  private static double missing(Estimate contrast) {
    return ContrastCurve.missing(contrast.value());
  }
}
