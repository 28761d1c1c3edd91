package lapline.content.units;

import java.util.Arrays;
import java.util.Comparator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lapline.trade.measure.Unit;

/** A number keeps its unit beside it: no line of a written text ends between the two. */
public final class NumberAndUnit {
  private static final Pattern BETWEEN =
      Pattern.compile(
          "(?<=\\p{N}) (?=(?:" + symbols() + ")(?![\\p{L}\\p{N}]))",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private NumberAndUnit() {}

  private static String symbols() {
    return Arrays.stream(Unit.values())
        .map(Unit::symbol)
        .filter(symbol -> !symbol.isEmpty())
        .distinct()
        .sorted(Comparator.comparing(String::length).reversed())
        .map(Pattern::quote)
        .collect(Collectors.joining("|"));
  }

  /** The text with a no-break space between each number and its unit. */
  public static String together(String text) {
    return BETWEEN.matcher(text).replaceAll("\u00a0");
  }
}
