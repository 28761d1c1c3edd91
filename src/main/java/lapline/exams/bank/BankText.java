package lapline.exams.bank;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.content.units.BothUnits;
import lapline.trade.measure.UnitSystem;

/**
 * The wording of a question with its places filled: {@code {wet}} for a value, and {@code {25 mm |
 * 1 in}} for a quantity in the reader's units.
 */
public final class BankText {
  private static final Pattern VALUE = Pattern.compile("\\{([^{}|]*)}");

  private BankText() {}

  /**
   * @param values as they are to be read, by name
   */
  public static String fill(String text, UnitSystem system, Map<String, String> values) {
    return VALUE
        .matcher(BothUnits.shown(text, system))
        .replaceAll(
            m -> Matcher.quoteReplacement(values.getOrDefault(m.group(1).strip(), m.group())));
  }

  /** The names of values that a text has places for. */
  public static List<String> names(String text) {
    return VALUE.matcher(text).results().map(m -> m.group(1).strip()).toList();
  }
}
