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

/**
 * Targets as people write them: {@code 3 to 5 in}, {@code 24 psi ± 1}, {@code at least 3 °C},
 * {@code at most 0 mm}.
 */
public final class TargetText {
  private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\bto\\b|–|\\.\\.)\\s*(.+)");
  private static final Pattern ABOUT = Pattern.compile("(.+?)\\s*(?:±|\\+/-|\\+-)\\s*(.+)");
  private static final Pattern ONE_SIDED = Pattern.compile("(at least|at most)\\s+(.+)");
  private static final Pattern UNIT_AT_END = Pattern.compile(".*?\\d\\s*([^\\d\\s.,/][^\\d]*)");

  private static final Pattern WORDS = Pattern.compile("at least|at most|\\bto\\b|\\.\\.|±|\\+/-");
  private static final Pattern BARE = Pattern.compile("[-–+\\d.,/\\s]*\\d[-–+\\d.,/\\s]*");

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
      return oneSided(oneSided.group(1), value(oneSided.group(2), dimension, assumed));
    }
    Matcher about = ABOUT.matcher(tidy);
    if (about.matches()) {
      return about(about.group(1), about.group(2), dimension, assumed);
    }
    Matcher range = RANGE.matcher(tidy);
    return range.matches()
        ? between(range.group(1), range.group(2), dimension, assumed)
        : Optional.empty();
  }

  private static Optional<TargetRange> oneSided(String words, OptionalDouble limit) {
    if (limit.isEmpty()) {
      return Optional.empty();
    }
    double si = limit.getAsDouble();
    return Optional.of(words.equals("at least") ? TargetRange.atLeast(si) : TargetRange.atMost(si));
  }

  /** The unit may stand behind either number or both: {@code 24 psi ± 1}, {@code 24 ± 1 psi}. */
  private static Optional<TargetRange> about(
      String middle, String either, Dimension dimension, UnitSystem assumed) {
    Dimension step =
        dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
    OptionalDouble centre = value(withUnitOf(middle, either), dimension, assumed);
    OptionalDouble half = value(withUnitOf(either, middle), step, assumed);
    boolean good = centre.isPresent() && half.isPresent() && half.getAsDouble() >= 0;
    return good
        ? Optional.of(
            new TargetRange(
                centre.getAsDouble() - half.getAsDouble(),
                centre.getAsDouble() + half.getAsDouble()))
        : Optional.empty();
  }

  /** The text with the unit that was meant, so that it means the same to whoever reads it later. */
  public static String withUnit(String text, Dimension dimension, UnitSystem assumed) {
    String tidy = text == null ? "" : text.strip();
    String symbol = isBare(tidy) ? Unit.preferred(dimension, assumed).symbol() : "";
    return symbol.isEmpty() ? tidy : tidy + " " + symbol;
  }

  /** Whether a text names no unit. */
  static boolean isBare(String text) {
    return BARE.matcher(WORDS.matcher(text).replaceAll(" ")).matches();
  }

  private static Optional<TargetRange> between(
      String least, String most, Dimension dimension, UnitSystem assumed) {
    OptionalDouble low = value(withUnitOf(least, most), dimension, assumed);
    OptionalDouble high = value(withUnitOf(most, least), dimension, assumed);
    boolean good = low.isPresent() && high.isPresent() && low.getAsDouble() <= high.getAsDouble();
    return good
        ? Optional.of(new TargetRange(low.getAsDouble(), high.getAsDouble()))
        : Optional.empty();
  }

  /** '3' beside '5 in' is '3 in'. */
  private static String withUnitOf(String number, String other) {
    Matcher unit = UNIT_AT_END.matcher(other);
    return number.matches(".*\\d") && unit.matches() ? number + " " + unit.group(1) : number;
  }

  private static OptionalDouble value(String text, Dimension dimension, UnitSystem assumed) {
    return QuantityReader.read(text, dimension, assumed) instanceof ReadQuantity.Understood u
        ? OptionalDouble.of(u.si())
        : OptionalDouble.empty();
  }
}
