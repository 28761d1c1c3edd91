package lapline.trade.measure;

import java.util.List;

/** What was understood of something a person typed. */
public sealed interface ReadQuantity {

  /**
   * @param si the value in the SI unit of the dimension
   * @param unit the unit it was taken to be in
   * @param shownAs the value as understood, to be shown back
   */
  record Understood(double si, Unit unit, String shownAs) implements ReadQuantity {}

  /**
   * @param reason what is wrong
   * @param args words for the message: for a wrong unit the unit typed and the units that would do
   */
  record NotUnderstood(Problem reason, List<String> args) implements ReadQuantity {}

  /** Why a text is not a quantity. */
  enum Problem {
    EMPTY,
    NOT_A_NUMBER,
    WRONG_UNIT,
    NOT_FINITE,
    TOO_LONG
  }
}
