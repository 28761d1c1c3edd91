package lapline.trade.measure;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as people write it: {@code 14:05}, {@code 14.05}, {@code 14h05}, {@code 1405},
 * {@code 2:05 pm}, {@code 2 p.m.}, {@code 14:05:30}. Without am or pm the clock has 24 hours; a
 * bare hour is refused, for '2' may be night or afternoon.
 */
final class ClockText {
  private static final String HALF = "\\s*([ap])\\.?\\s?m\\.?";
  private static final Pattern FULL =
      Pattern.compile("(\\d{1,2})[:.h](\\d{2})(?:[:.](\\d{2}))?(?:" + HALF + ")?");
  private static final Pattern FOUR_DIGITS = Pattern.compile("(\\d{2})(\\d{2})()()");
  private static final Pattern HOUR = Pattern.compile("(\\d{1,2})()()" + HALF);

  private ClockText() {}

  /**
   * @return seconds after midnight; empty when the text is no time of day
   */
  static OptionalDouble read(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    for (Pattern pattern : new Pattern[] {FULL, FOUR_DIGITS, HOUR}) {
      Matcher m = pattern.matcher(small);
      if (m.matches()) {
        return seconds(
            hour(number(m.group(1)), m.group(4)), number(m.group(2)), number(m.group(3)));
      }
    }
    return OptionalDouble.empty();
  }

  private static int number(String digits) {
    return digits == null || digits.isEmpty() ? 0 : Integer.parseInt(digits);
  }

  /** The hour of 24, or one past the day where the half of the day does not fit it. */
  private static int hour(int hour, String half) {
    if (half == null || half.isEmpty()) {
      return hour;
    }
    return hour < 1 || hour > 12 ? 24 : hour % 12 + (half.equals("p") ? 12 : 0);
  }

  private static OptionalDouble seconds(int hour, int minute, int second) {
    return hour > 23 || minute > 59 || second > 59
        ? OptionalDouble.empty()
        : OptionalDouble.of(hour * 3600.0 + minute * 60.0 + second);
  }
}
