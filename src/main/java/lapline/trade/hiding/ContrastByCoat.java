package lapline.trade.hiding;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * Coats to hiding from the contrast ratio after each coat.
 *
 * <p>What is missing to full hiding, 1 − C, falls by nearly the same factor with each like coat (by
 * Kubelka and Munk the light through the film and back falls so), hence ln(1 − C) is taken as
 * straight from coat to coat. The crossing is interpolated between the last coat below the mark and
 * the next; where the mark was not reached, the last two are drawn on by at most one coat.
 * Uncertainty to first order. Accuracy of the interpolation against the closed form: within 0.03 of
 * a coat where four or more coats hide, 0.1 where two do.
 */
public final class ContrastByCoat {
  /** Nothing nearer to full hiding can be told from it. */
  private static final double LEAST_MISSING = 1e-3;

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
   * @param bareCard contrast ratio before the first coat, 0 to below the mark
   * @param mark contrast that counts as hiding, more than 0, below 0.999
   */
  public static CoatsToHiding coatsToHiding(
      Estimate bareCard, List<Estimate> afterEachCoat, double mark) {
    Valid.between("mark", mark, 0.01, 1 - LEAST_MISSING);
    Valid.between("bareCard", bareCard.value(), 0, Math.nextDown(mark));
    if (afterEachCoat.isEmpty()) {
      throw new MeasureException("coats looked at", 0, "1 or more");
    }
    afterEachCoat.forEach(c -> Valid.notNegative("contrast", c.value()));
    int last = afterEachCoat.size();
    int below = lastBelow(afterEachCoat, mark);
    int from = Math.min(below, last - 1);
    Estimate left = from == 0 ? bareCard : afterEachCoat.get(from - 1);
    Estimate right = afterEachCoat.get(from);
    boolean rising = right.value() > left.value();
    if (!rising || crossing(from, left, right, mark).value() > last + 1) {
      return new CoatsToHiding.StillShowing(last);
    }
    return new CoatsToHiding.Crossed(crossing(from, left, right, mark));
  }

  /** Number of the last coat below the mark; 0 for the bare card. */
  private static int lastBelow(List<Estimate> contrast, double mark) {
    int below = contrast.size();
    while (below > 0 && contrast.get(below - 1).value() >= mark) {
      below--;
    }
    return below;
  }

  private static Estimate crossing(int from, Estimate left, Estimate right, double mark) {
    double atLeft = Math.log(missing(left));
    double atRight = Math.log(missing(right));
    double atMark = Math.log(1 - mark);
    double fall = atLeft - atRight;
    double perLeft = (atMark - atRight) / (fall * fall);
    double perRight = (atLeft - atMark) / (fall * fall);
    return Gum.combine(
        from + (atLeft - atMark) / fall,
        List.of(
            new Part(-perLeft / missing(left), left), new Part(-perRight / missing(right), right)));
  }

  private static double missing(Estimate contrast) {
    return Math.max(LEAST_MISSING, 1 - contrast.value());
  }
}
