package lapline.exams.bank;

import lapline.content.units.Quantity;
import lapline.trade.measure.Dimension;

/**
 * How far an answer may be off and still be right: an amount, or a share of the answer. For an
 * answer in per cent the share means percentage points.
 */
public record Tolerance(Quantity amount) {

  /** In the SI unit of the answer. */
  public double around(Quantity answer) {
    boolean relative =
        amount.dimension() == Dimension.SHARE && answer.dimension() != Dimension.SHARE;
    return relative ? Math.abs(answer.si()) * amount.si() : amount.si();
  }

  boolean fits(Dimension answer) {
    boolean step =
        answer == Dimension.TEMPERATURE && amount.dimension() == Dimension.TEMPERATURE_DIFFERENCE;
    boolean same = amount.dimension() == answer && answer != Dimension.TEMPERATURE;
    return step || same || amount.dimension() == Dimension.SHARE;
  }
}
