package lapline.exams.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.trade.measure.UnitSystem;

/**
 * The wording of a question with its places filled: {@code {wet}} for a value, and {@code {25 mm |
 * 1 in}} for a quantity in the reader's units.
 */
public final class BankText {
  private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)}");
  private static final String EITHER = "|";

  private BankText() {}

  /**
   * @param values as they are to be read, by name
   */
  public static String fill(String text, UnitSystem system, Map<String, String> values) {
    return PLACE
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(filled(m.group(1), system, values)));
  }

  private static String filled(String place, UnitSystem system, Map<String, String> values) {
    return place.contains(EITHER)
        ? split(place).in(system)
        : values.getOrDefault(place.strip(), "{" + place + "}");
  }

  /** Both sides of {@code metric | US}; one text without a bar is good for both. */
  static PerSystem<String> split(String text) {
    int bar = text.indexOf(EITHER);
    return bar < 0
        ? new PerSystem<>(text.strip(), text.strip())
        : new PerSystem<>(text.substring(0, bar).strip(), text.substring(bar + 1).strip());
  }

  /** The names of values that a text has places for. */
  public static List<String> names(String text) {
    return places(text).stream().filter(p -> !p.contains(EITHER)).map(String::strip).toList();
  }

  /** The quantities that a text gives in both systems. */
  static List<PerSystem<String>> pairs(String text) {
    List<PerSystem<String>> pairs = new ArrayList<>();
    places(text).stream().filter(p -> p.contains(EITHER)).map(BankText::split).forEach(pairs::add);
    return pairs;
  }

  private static List<String> places(String text) {
    return PLACE.matcher(text).results().map((MatchResult m) -> m.group(1)).toList();
  }
}
