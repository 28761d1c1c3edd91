package lapline.practice;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/** Targets as people write them: {@code 3 to 5 in}, {@code at least 3 °C}, {@code at most 0 mm}. */
public final class TargetText {
  private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\bto\\b|–|\\.\\.)\\s*(.+)");
  private static final Pattern ONE_SIDED = Pattern.compile("(at least|at most)\\s+(.+)");
  private static final Pattern UNIT_AT_END = Pattern.compile(".*?\\d\\s*([^\\d\\s.,/][^\\d]*)");

  private TargetText() {}

  /**
   * A range in the SI unit of the dimension; empty when the text is none.
   *
   * @param assumed the unit system of numbers without a unit
   */
  public static Optional<TargetRange> read(String text, Dimension dimension, UnitSystem assumed) {
    String tidy = text == null ? "" : text.strip();
    Matcher oneSided = ONE_SIDED.matcher(tidy);
    if (oneSided.matches()) {
      OptionalDouble limit = value(oneSided.group(2), dimension, assumed);
      boolean least = oneSided.group(1).equals("at least");
      return limit.isEmpty()
          ? Optional.empty()
          : Optional.of(
              least
                  ? TargetRange.atLeast(limit.getAsDouble())
                  : TargetRange.atMost(limit.getAsDouble()));
    }
    Matcher range = RANGE.matcher(tidy);
    return range.matches()
        ? between(range.group(1), range.group(2), dimension, assumed)
        : Optional.empty();
  }

  /** The text with the unit that was meant, so that it means the same to whoever reads it later. */
  public static String withUnit(String text, Dimension dimension, UnitSystem assumed) {
    String tidy = text == null ? "" : text.strip();
    boolean bare = !tidy.isEmpty() && Character.isDigit(tidy.charAt(tidy.length() - 1));
    String symbol = bare ? Unit.preferred(dimension, assumed).symbol() : "";
    return symbol.isEmpty() ? tidy : tidy + " " + symbol;
  }

  private static Optional<TargetRange> between(
      String least, String most, Dimension dimension, UnitSystem assumed) {
    OptionalDouble low = value(withUnitOf(least, most), dimension, assumed);
    OptionalDouble high = value(most, dimension, assumed);
    boolean good = low.isPresent() && high.isPresent() && low.getAsDouble() <= high.getAsDouble();
    return good
        ? Optional.of(new TargetRange(low.getAsDouble(), high.getAsDouble()))
        : Optional.empty();
  }

  /** '3' beside '5 in' is '3 in'. */
  private static String withUnitOf(String least, String most) {
    Matcher unit = UNIT_AT_END.matcher(most);
    return least.matches(".*\\d") && unit.matches() ? least + " " + unit.group(1) : least;
  }

  private static OptionalDouble value(String text, Dimension dimension, UnitSystem assumed) {
    return QuantityReader.read(text, dimension, assumed) instanceof ReadQuantity.Understood u
        ? OptionalDouble.of(u.si())
        : OptionalDouble.empty();
  }
}
