package lapline.trade.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.trade.measure.ReadQuantity.NotUnderstood;
import lapline.trade.measure.ReadQuantity.Problem;
import lapline.trade.measure.ReadQuantity.Understood;

/**
 * Reads what a person typed: '62', '62,0', '62 um', '2.4 mil', '1 1/2 in', '10 min 30 s', '2:05
 * pm', 'P800'. Without a unit the person's usual one is assumed.
 *
 * <p>One separator is a decimal mark, comma or point alike, so '1,250' is one and a quarter;
 * '1,250.5' and '1.250,5' have the last one as decimal mark; '1,250,000' and '1 250' are grouped. A
 * share without % is in per cent: '70' and '70 %' are the same, and '0.7' is 0.7 %. Never throws on
 * any text.
 */
public final class QuantityReader {
  private static final int LONGEST = 40;
  private static final String DECIMAL = "[-+]?(?:\\d[\\d.,]*|[.,]\\d+)(?:[eE][-+]?\\d{1,3})?";
  private static final Pattern FRACTION =
      Pattern.compile("([-+]?)(?:(\\d{1,6})[\\s-]+)?(\\d{1,6})\\s*[/⁄]\\s*(\\d{1,6})\\s*(\\D*)");
  private static final Pattern NUMBER = Pattern.compile("(" + DECIMAL + ")\\s*(.*)");
  private static final Pattern CLOCK =
      Pattern.compile(
          "(\\d{1,2})[:.h](\\d{2})\\s*(am|pm|a\\.m\\.|p\\.m\\.)?|(\\d{1,2})\\s*(am|pm)");
  private static final Pattern MINUTES = Pattern.compile("(\\d{1,4}):([0-5]\\d)");
  private static final Pattern MINUTES_SECONDS =
      Pattern.compile("(\\d{1,4})\\s*(?:min|m)\\s*(\\d{1,2})\\s*(?:s|sec)?");
  private static final Pattern GRIT = Pattern.compile("p?\\s*(\\d{1,5})(?:\\s*grit)?");

  private QuantityReader() {}

  /**
   * @param typed any text; null is taken as empty
   * @param assumed the unit system a bare number is in
   */
  public static ReadQuantity read(String typed, Dimension dimension, UnitSystem assumed) {
    String text = tidy(typed);
    if (text.isEmpty()) {
      return problem(Problem.EMPTY);
    }
    if (text.length() > LONGEST) {
      return problem(Problem.TOO_LONG);
    }
    return switch (dimension) {
      case CLOCK -> clock(text);
      case GRIT -> grit(text);
      case DURATION -> duration(text, assumed);
      default -> number(text, dimension, assumed);
    };
  }

  private static String tidy(String typed) {
    return typed == null
        ? ""
        : typed
            .replaceAll("[\\u00a0\\u2007\\u2009\\u202f\\t]", " ")
            .replace('−', '-')
            .replace("¼", " 1/4")
            .replace("½", " 1/2")
            .replace("¾", " 3/4")
            .strip();
  }

  private static ReadQuantity number(String text, Dimension dimension, UnitSystem assumed) {
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return fraction(fraction, dimension, assumed);
    }
    Matcher m = NUMBER.matcher(grouped(text));
    if (!m.matches()) {
      return problem(Problem.NOT_A_NUMBER, text);
    }
    Double value = decimal(m.group(1));
    return value == null
        ? problem(Problem.NOT_A_NUMBER, text)
        : withUnit(value, m.group(2), dimension, assumed);
  }

  /** Takes out spaces that group thousands. */
  private static String grouped(String text) {
    return text.replaceAll("(?<=\\d) (?=\\d{3}(\\D|$))", "");
  }

  private static ReadQuantity fraction(Matcher m, Dimension dimension, UnitSystem assumed) {
    double under = Double.parseDouble(m.group(4));
    if (under == 0) {
      return problem(Problem.NOT_A_NUMBER, m.group());
    }
    double whole = m.group(2) == null ? 0 : Double.parseDouble(m.group(2));
    double value = whole + Double.parseDouble(m.group(3)) / under;
    return withUnit(m.group(1).equals("-") ? -value : value, m.group(5), dimension, assumed);
  }

  private static Double decimal(String digits) {
    int lastPoint = digits.lastIndexOf('.');
    int lastComma = digits.lastIndexOf(',');
    String plain;
    if (lastPoint >= 0 && lastComma >= 0) {
      char group = lastPoint > lastComma ? ',' : '.';
      plain = digits.replace(String.valueOf(group), "").replace(',', '.');
    } else if (digits.indexOf(',') != lastComma || digits.indexOf('.') != lastPoint) {
      plain = digits.replaceAll("[.,]", "");
    } else {
      plain = digits.replace(',', '.');
    }
    try {
      return Double.valueOf(plain);
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static ReadQuantity withUnit(
      double value, String spelling, Dimension dimension, UnitSystem assumed) {
    String name = spelling.strip();
    Optional<Unit> unit =
        name.isEmpty()
            ? Optional.of(Unit.preferred(dimension, assumed))
            : Unit.spelt(name, dimension);
    if (unit.isEmpty()) {
      Problem why =
          Unit.speltAnywhere(name).isPresent() ? Problem.WRONG_UNIT : Problem.NOT_A_NUMBER;
      return why == Problem.WRONG_UNIT
          ? problem(why, name, symbols(dimension))
          : problem(why, (plain(value) + " " + name));
    }
    return understood(unit.get().toSi(value), unit.get(), dimension, assumed);
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }

  private static ReadQuantity understood(
      double si, Unit unit, Dimension dimension, UnitSystem system) {
    if (!Double.isFinite(si) || Math.abs(si) > 1e15) {
      return problem(Problem.NOT_FINITE);
    }
    return new Understood(si, unit, QuantityWriter.write(si, dimension, system));
  }

  /** The units a dimension may be written in, for a message. */
  public static String symbols(Dimension dimension) {
    return String.join(
        ", ",
        Arrays.stream(Unit.values())
            .filter(u -> u.dimension() == dimension && !u.symbol().isEmpty())
            .map(Unit::symbol)
            .toList());
  }

  private static ReadQuantity duration(String text, UnitSystem assumed) {
    Matcher m = MINUTES.matcher(text);
    if (!m.matches()) {
      m = MINUTES_SECONDS.matcher(text.toLowerCase(Locale.ROOT));
    }
    if (m.matches()) {
      double seconds = 60 * Double.parseDouble(m.group(1)) + Double.parseDouble(m.group(2));
      return understood(seconds, Unit.SECOND, Dimension.DURATION, assumed);
    }
    return number(text, Dimension.DURATION, assumed);
  }

  private static ReadQuantity clock(String text) {
    Matcher m = CLOCK.matcher(text.toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      return problem(Problem.NOT_A_NUMBER, text);
    }
    boolean withMinutes = m.group(1) != null;
    int hour = Integer.parseInt(withMinutes ? m.group(1) : m.group(4));
    int minute = withMinutes ? Integer.parseInt(m.group(2)) : 0;
    String half = withMinutes ? m.group(3) : m.group(5);
    if (half != null) {
      if (hour < 1 || hour > 12) {
        return problem(Problem.NOT_A_NUMBER, text);
      }
      hour = hour % 12 + (half.startsWith("p") ? 12 : 0);
    }
    return hour > 23 || minute > 59
        ? problem(Problem.NOT_A_NUMBER, text)
        : understood(
            hour * 3600.0 + minute * 60.0, Unit.TIME_OF_DAY, Dimension.CLOCK, UnitSystem.METRIC);
  }

  private static ReadQuantity grit(String text) {
    Matcher m = GRIT.matcher(text.toLowerCase(Locale.ROOT));
    return m.matches()
        ? understood(
            Double.parseDouble(m.group(1)), Unit.P_GRADE, Dimension.GRIT, UnitSystem.METRIC)
        : problem(Problem.NOT_A_NUMBER, text);
  }

  private static NotUnderstood problem(Problem reason, String... args) {
    return new NotUnderstood(reason, List.of(args));
  }
}
