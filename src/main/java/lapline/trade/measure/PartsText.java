package lapline.trade.measure;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity in two or three units, greatest first: {@code 1 min 30 s}, {@code 2 h 5 min}, {@code 3
 * ft 6 1/2 in}, {@code 3'6"}, {@code 1 lb 4 oz}; after hours, minutes and feet the last unit may be
 * left out ({@code 1 min 30}). Minutes and seconds also as {@code 1:30}, hours as {@code 1:05:30}.
 */
final class PartsText {
  private static final Set<Dimension> IN_PARTS =
      Set.of(Dimension.DURATION, Dimension.LENGTH, Dimension.MASS, Dimension.VOLUME);
  private static final Map<Unit, Unit> NEXT =
      Map.of(Unit.HOUR, Unit.MINUTE, Unit.MINUTE, Unit.SECOND, Unit.FOOT, Unit.INCH);
  private static final Pattern PART =
      Pattern.compile("\\G\\s*(" + NumberText.ANY + ")\\s*([^\\d\\s][^\\d,.]*)?");
  private static final Pattern COLONS =
      Pattern.compile("(?:(\\d{1,3}):(?=\\d\\d:))?(\\d{1,4}):([0-5]\\d(?:[.,]\\d+)?)");

  private final Dimension dimension;
  private final UnitSystem habit;
  private double si;
  private Unit before;
  private int parts;

  private PartsText(Dimension dimension, UnitSystem habit) {
    this.dimension = dimension;
    this.habit = habit;
  }

  /**
   * @param text without a sign
   * @return the sum in SI; empty when the text is not in two parts or more, or they are of another
   *     dimension or order
   */
  static OptionalDouble read(String text, Dimension dimension, UnitSystem habit) {
    Matcher colons = COLONS.matcher(text);
    if (dimension == Dimension.DURATION && colons.matches()) {
      return colons(colons);
    }
    return IN_PARTS.contains(dimension)
        ? new PartsText(dimension, habit).sum(text)
        : OptionalDouble.empty();
  }

  private static OptionalDouble colons(Matcher m) {
    double hours = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
    double seconds = Double.parseDouble(m.group(3).replace(',', '.'));
    return OptionalDouble.of(hours * 3600 + Double.parseDouble(m.group(2)) * 60 + seconds);
  }

  private OptionalDouble sum(String text) {
    Matcher m = PART.matcher(text);
    int end = 0;
    while (end < text.length() && m.find()) {
      if (!add(NumberText.read(m.group(1), habit), unit(m.group(2)))) {
        return OptionalDouble.empty();
      }
      end = m.end();
    }
    return end == text.length() && parts > 1 ? OptionalDouble.of(si) : OptionalDouble.empty();
  }

  private Optional<Unit> unit(String spelling) {
    return spelling == null
        ? Optional.ofNullable(before).map(NEXT::get)
        : Unit.spelt(spelling, dimension);
  }

  private boolean add(OptionalDouble number, Optional<Unit> unit) {
    boolean inOrder = unit.isPresent() && (before == null || unit.get().factor() < before.factor());
    if (!inOrder || number.isEmpty()) {
      return false;
    }
    parts++;
    before = unit.get();
    si += before.toSi(number.getAsDouble());
    return true;
  }
}
