package lapline.content.units;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity.Understood;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * Reads quantities as authors of course and questions write them: {@code 62 um}, {@code 0.5 K},
 * {@code 3}. The unit says what is measured; where two things share a unit, the one that is meant
 * more often in a shop comes first: mm is a length and not a film, °C a temperature and not a
 * difference (that is K).
 */
public final class QuantityWords {
  private static final List<Dimension> MOST_LIKELY_FIRST =
      List.of(
          Dimension.NUMBER,
          Dimension.LENGTH,
          Dimension.FILM,
          Dimension.SHARE,
          Dimension.TEMPERATURE,
          Dimension.TEMPERATURE_DIFFERENCE,
          Dimension.VOLUME,
          Dimension.MASS,
          Dimension.AREA,
          Dimension.SPEED,
          Dimension.PRESSURE,
          Dimension.DURATION,
          Dimension.GLOSS);
  private static final Pattern FIGURES_AND_UNIT =
      Pattern.compile("[-+\\d.,/½¼¾⅜⅛⅝⅞\\s]*[\\d½¼¾⅜⅛⅝⅞]\\s*(.*)");

  private QuantityWords() {}

  /** Empty when the text is no quantity. */
  public static Optional<Quantity> read(String text) {
    return unitOf(text).stream().flatMap(unit -> read(text, unit.dimension()).stream()).findFirst();
  }

  /** Empty when the text is no quantity of this dimension. */
  public static Optional<Quantity> read(String text, Dimension dimension) {
    return unitOf(text).stream()
        .filter(unit -> unit.dimension() == dimension)
        .flatMap(unit -> in(text, unit).stream())
        .findFirst();
  }

  private static Optional<Quantity> in(String text, Unit unit) {
    String plain = text.replace("⅜", " 3/8").replace("⅛", " 1/8").replace("⅝", " 5/8");
    return QuantityReader.read(plain.replace("⅞", " 7/8"), unit.dimension(), UnitSystem.METRIC)
            instanceof Understood u
        ? Optional.of(new Quantity(u.si(), unit))
        : Optional.empty();
  }

  /** All units that this text can be in, the likeliest first. */
  public static List<Unit> unitOf(String text) {
    Matcher m = FIGURES_AND_UNIT.matcher(text.strip());
    if (!m.matches()) {
      return List.of();
    }
    String spelling = m.group(1).strip();
    return spelling.isEmpty()
        ? List.of(Unit.PLAIN)
        : MOST_LIKELY_FIRST.stream()
            .flatMap(d -> Unit.spelt(spelling, d).stream())
            .filter(unit -> unit != Unit.KELVIN)
            .toList();
  }
}
