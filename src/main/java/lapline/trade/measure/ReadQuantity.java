package lapline.trade.measure;

import java.util.List;

/** What was understood of something a person typed. */
public sealed interface ReadQuantity {

  /**
   * @param si the value in the SI unit of the dimension
   * @param unit the unit it was taken to be in
   * @param shownAs the value as understood, in the person's units, to be shown back
   */
  record Understood(double si, Unit unit, String shownAs) implements ReadQuantity {}

  /**
   * @param reason what is wrong
   * @param args words for the message, as {@link Problem} lists them
   */
  record NotUnderstood(Problem reason, List<String> args) implements ReadQuantity {}

  /** Why a text is not a quantity. */
  enum Problem {
    /** Nothing but space. */
    EMPTY,
    /** Argument: what was typed. */
    NOT_A_NUMBER,
    /** A count of two and a half. Argument: what was typed. */
    NOT_WHOLE,
    /**
     * Arguments: the unit typed; the units that would do; the name of the {@link Dimension} the
     * typed unit belongs to, empty when it is no unit at all.
     */
    WRONG_UNIT,
    /** Beyond anything a shop measures, above 10¹⁵. */
    NOT_FINITE,
    /** Argument: how many characters are allowed. */
    TOO_LONG
  }
}
