package lapline.content.units;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.content.YamlNode;
import lapline.trade.measure.UnitSystem;

/**
 * Quantities that a text gives in both systems, such as {@code {25 mm | 1 in}}, so that everybody
 * reads round numbers in units of their own. A place without a bar is something else, and stays; a
 * text without braces is good for both.
 */
public final class BothUnits {
  private static final Pattern PLACE = Pattern.compile("\\{([^{}|]*)\\|([^{}|]*)}");

  private BothUnits() {}

  /** The text for people who think in this system. */
  public static String in(String text, UnitSystem system) {
    return text.indexOf('{') < 0
        ? text
        : PLACE.matcher(text).replaceAll(m -> Matcher.quoteReplacement(pair(m).in(system)));
  }

  /** The same for a text that is shown as it stands: no line ends between a number and its unit. */
  public static String shown(String text, UnitSystem system) {
    return NumberAndUnit.together(in(text, system));
  }

  /** The quantities that a text gives in both systems. */
  public static List<PerSystem<String>> pairs(String text) {
    return PLACE.matcher(text).results().map(BothUnits::pair).toList();
  }

  /** The text without what it gives in both systems, to look for what it gives in one only. */
  public static String besides(String text) {
    return PLACE.matcher(text).replaceAll("…");
  }

  /** Tells a text of the course whose pairs disagree, or whose braces are no pair. */
  public static void check(YamlNode node) {
    if (node.isText()) {
      BothUnitsCheck.check(node.text(), node::problem);
    }
  }

  /** Both sides of {@code metric | US} without braces; a text without a bar is good for both. */
  public static PerSystem<String> split(String text) {
    int bar = text.indexOf('|');
    return bar < 0
        ? new PerSystem<>(text.strip(), text.strip())
        : new PerSystem<>(text.substring(0, bar).strip(), text.substring(bar + 1).strip());
  }

  private static PerSystem<String> pair(MatchResult place) {
    return new PerSystem<>(place.group(1).strip(), place.group(2).strip());
  }
}
