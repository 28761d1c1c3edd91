package lapline.trade.measure;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: {@code 62}, {@code 62,0}, {@code .5}, {@code 1 250.5}, {@code
 * 1.250,5}, {@code 6.2e-5}, {@code 3/4}, {@code 1 1/2}, {@code 3-1/2}.
 *
 * <p>A single comma or point is a decimal mark, so '1.250' is one and a quarter to everyone. The
 * one doubtful text is a comma before exactly three digits: '1,250' is one and a quarter to a
 * person who thinks in metric units and 1250 to one who thinks in US units, whose decimal mark is
 * never a comma ('0,125' is an eighth to both). Thousands are otherwise known by there being two
 * marks ('1,250,000', '1.250,5') or a space or apostrophe before each three digits.
 */
final class NumberText {
  private static final String FRACTION = "(?:\\d{1,6}(?: +| ?- ?))?\\d{1,6} ?/ ?\\d{1,6}";
  private static final String DECIMAL =
      "\\d{1,3}(?:[ ']\\d{3})+(?!\\d)(?:[.,]\\d*)?|[\\d.,]*\\d[.,]?(?:[eE][-+]?\\d{1,3})?";

  /** Matches any number at the place where it is tried, without its sign. */
  static final String ANY = "(?:" + FRACTION + "|" + DECIMAL + ")";

  private static final Pattern PARTS =
      Pattern.compile("(?:(\\d{1,6})(?: +| ?- ?))?(\\d{1,6}) ?/ ?(\\d{1,6})");
  private static final Pattern PLAIN = Pattern.compile("\\d*[.,]?\\d+|\\d+[.,]");
  private static final Pattern GROUPED =
      Pattern.compile("\\d{1,3}(?:([,.' ])\\d{3})(?:\\1\\d{3})*(?:(?!\\1)[.,]\\d*)?");
  private static final Pattern US_THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

  private NumberText() {}

  /**
   * @param text digits without a sign, as matched by {@link #ANY}
   * @return empty when the marks stand where no number has them, or the fraction is of nothing
   */
  static OptionalDouble read(String text, UnitSystem habit) {
    Matcher fraction = PARTS.matcher(text);
    return fraction.matches() ? fraction(fraction) : decimal(text, habit);
  }

  static boolean isFraction(String text) {
    return PARTS.matcher(text).matches();
  }

  private static OptionalDouble fraction(Matcher parts) {
    double under = Double.parseDouble(parts.group(3));
    double whole = parts.group(1) == null ? 0 : Double.parseDouble(parts.group(1));
    return under == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(whole + Double.parseDouble(parts.group(2)) / under);
  }

  private static OptionalDouble decimal(String text, UnitSystem habit) {
    int e = text.toLowerCase(Locale.ROOT).indexOf('e');
    String digits = e < 0 ? text : text.substring(0, e);
    String power = e < 0 ? "" : text.substring(e);
    boolean thousands = habit == UnitSystem.US && US_THOUSANDS.matcher(digits).matches();
    if (PLAIN.matcher(digits).matches() && !thousands) {
      return OptionalDouble.of(Double.parseDouble(digits.replace(',', '.') + power));
    }
    Matcher grouped = GROUPED.matcher(digits);
    return grouped.matches()
        ? OptionalDouble.of(
            Double.parseDouble(digits.replace(grouped.group(1), "").replace(',', '.') + power))
        : OptionalDouble.empty();
  }
}
