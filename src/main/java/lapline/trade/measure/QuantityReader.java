package lapline.trade.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lapline.trade.measure.ReadQuantity.NotUnderstood;
import lapline.trade.measure.ReadQuantity.Problem;
import lapline.trade.measure.ReadQuantity.Understood;

/**
 * Reads what a person typed: '62', '62,0', '62 um', '2.4 mil', '1 1/2 in', '10 min 30 s', '2:05
 * pm', 'P800'. Without a unit the person's usual one is assumed. Never throws on any text.
 *
 * <p>How decimal marks and thousands are told apart is said at {@link NumberText}; what follows the
 * unit is refused, so that nothing a person wrote is dropped unseen.
 *
 * <p>A share is in per cent with or without the sign: '70' and '70 %' are the same and '0.7' is 0.7
 * %, since on one page a number must not change its meaning with its size; the answer is shown back
 * as '0.7 %'. Only a bare fraction is a part of the whole: an overlap of '2/3' is 66.7 %.
 */
public final class QuantityReader {
  private static final int LONGEST = 40;
  private static final double GREATEST = 1e15;
  private static final Pattern SIGNED = Pattern.compile("([-+]?) ?(.*)");
  private static final Pattern NUMBER = Pattern.compile("(" + NumberText.ANY + ")\\s*(.*)");
  private static final Pattern WORD = Pattern.compile("[\\p{L}°%\"'][^\\d]*");
  private static final Pattern GRIT =
      Pattern.compile("(?:grit )?(?:p[ -]?)?(\\d{1,5})(?: ?grit)?", Pattern.CASE_INSENSITIVE);

  private final String text;
  private final Dimension dimension;
  private final SpokenUnits spoken;
  private final UnitSystem assumed;

  private QuantityReader(String text, SpokenUnits spoken, UnitSystem assumed) {
    this.text = text;
    this.dimension = spoken.dimension();
    this.spoken = spoken;
    this.assumed = assumed;
  }

  /**
   * @param typed any text; null is taken as empty
   * @param assumed the unit system a bare number is in
   */
  public static ReadQuantity read(String typed, Dimension dimension, UnitSystem assumed) {
    return read(typed, SpokenUnits.usual(dimension), assumed);
  }

  /**
   * As above.
   *
   * @param spoken the unit of each system that a bare number is in
   */
  public static ReadQuantity read(String typed, SpokenUnits spoken, UnitSystem assumed) {
    if (typed != null && typed.strip().length() > LONGEST) {
      return problem(Problem.TOO_LONG, String.valueOf(LONGEST));
    }
    String text = TypedText.tidy(typed);
    return text.isEmpty()
        ? problem(Problem.EMPTY)
        : new QuantityReader(text, spoken, assumed).read();
  }

  /** The units a dimension may be written in, for a message. */
  public static String symbols(Dimension dimension) {
    return Arrays.stream(Unit.values())
        .filter(u -> u.dimension() == dimension && !u.symbol().isEmpty())
        .map(Unit::symbol)
        .collect(Collectors.joining(", "));
  }

  private ReadQuantity read() {
    return switch (dimension) {
      case CLOCK -> known(ClockText.read(text), Unit.TIME_OF_DAY);
      case GRIT -> known(grit(), Unit.P_GRADE);
      default -> signed();
    };
  }

  private ReadQuantity known(OptionalDouble si, Unit unit) {
    return si.isPresent() ? understood(si.getAsDouble(), unit) : notANumber();
  }

  private OptionalDouble grit() {
    Matcher m = GRIT.matcher(text);
    double grade = m.matches() ? Double.parseDouble(m.group(1)) : 0;
    return grade > 0 ? OptionalDouble.of(grade) : OptionalDouble.empty();
  }

  private ReadQuantity signed() {
    Matcher m = SIGNED.matcher(text);
    if (!m.matches()) {
      return notANumber();
    }
    double sign = m.group(1).equals("-") ? -1 : 1;
    OptionalDouble parts = PartsText.read(m.group(2), dimension, assumed);
    return parts.isPresent()
        ? understood(sign * parts.getAsDouble(), spoken.in(assumed))
        : oneNumber(sign, m.group(2));
  }

  private ReadQuantity oneNumber(double sign, String unsigned) {
    Matcher m = NUMBER.matcher(unsigned);
    OptionalDouble number =
        m.matches() ? NumberText.read(m.group(1), assumed) : OptionalDouble.empty();
    if (number.isEmpty()) {
      return notANumber();
    }
    double value = sign * number.getAsDouble();
    return m.group(2).isEmpty() || degrees(m.group(2))
        ? bare(value, m.group(1))
        : withUnit(value, m.group(2));
  }

  /** '20°' is in the person's own degrees. */
  private boolean degrees(String spelling) {
    boolean warmth =
        dimension == Dimension.TEMPERATURE || dimension == Dimension.TEMPERATURE_DIFFERENCE;
    return warmth && spelling.matches("°|deg\\.?|degrees?");
  }

  private ReadQuantity bare(double value, String digits) {
    Unit unit = spoken.in(assumed);
    boolean ofTheWhole = dimension == Dimension.SHARE && NumberText.isFraction(digits);
    return understood(ofTheWhole ? value : unit.toSi(value), unit);
  }

  private ReadQuantity withUnit(double value, String spelling) {
    Optional<Unit> unit = Unit.spelt(spelling, dimension);
    if (unit.isPresent()) {
      return understood(unit.get().toSi(value), unit.get());
    }
    return UnitSpelling.anywhere(spelling).isPresent() || WORD.matcher(spelling).matches()
        ? wrongUnit(spelling)
        : notANumber();
  }

  private ReadQuantity understood(double si, Unit unit) {
    if (!(Math.abs(si) <= GREATEST)) {
      return problem(Problem.NOT_FINITE);
    }
    boolean whole = dimension != Dimension.COUNT || si == Math.rint(si);
    return whole
        // adding 0 makes a typed '-0' a plain nought
        ? new Understood(si + 0.0, unit, QuantityWriter.write(si, spoken, assumed))
        : problem(Problem.NOT_WHOLE, text);
  }

  private NotUnderstood wrongUnit(String spelling) {
    if (symbols(dimension).isEmpty()) {
      return notANumber();
    }
    String kind = UnitSpelling.anywhere(spelling).map(u -> u.dimension().name()).orElse("");
    return problem(Problem.WRONG_UNIT, spelling, symbols(dimension), kind);
  }

  private NotUnderstood notANumber() {
    return problem(Problem.NOT_A_NUMBER, text);
  }

  private static NotUnderstood problem(Problem reason, String... args) {
    return new NotUnderstood(reason, List.of(args));
  }
}
