package lapline.exams.bank;

import java.util.List;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.trade.measure.Unit;

/**
 * Looks a question's wording over: every place for a value must have its value, and a quantity
 * given for both systems must be the same quantity.
 */
final class WordingCheck {
  /** Round numbers of the two systems differ: 75 mm stands beside 3 in, 3 °C beside 5 °F. */
  private static final double ROUND_NUMBERS = 0.1;

  private WordingCheck() {}

  static void check(YamlNode node, Set<String> values) {
    if (!node.isText()) {
      return;
    }
    for (String name : BankText.names(node.text())) {
      if (!values.contains(name)) {
        node.problem(
            "there is no value '" + name + "'",
            "write one of: " + String.join(", ", values) + "; or {25 mm | 1 in}");
      }
    }
    for (PerSystem<String> pair : BankText.pairs(node.text())) {
      if (!same(pair)) {
        node.problem(
            "'" + pair.metric() + "' and '" + pair.us() + "' are not the same quantity",
            "give one quantity in both systems, like {25 mm | 1 in}");
      }
    }
  }

  private static boolean same(PerSystem<String> pair) {
    String[] metric = pair.metric().split(" to ");
    String[] us = pair.us().split(" to ");
    if (metric.length != us.length) {
      return false;
    }
    for (int i = 0; i < metric.length; i++) {
      if (!same(withUnit(metric[i], pair.metric()), withUnit(us[i], pair.us()))) {
        return false;
      }
    }
    return true;
  }

  /** The first number of '50 to 75 mm' borrows the unit of the last. */
  private static String withUnit(String number, String whole) {
    boolean bare = QuantityWords.unitOf(number).equals(List.of(Unit.PLAIN));
    return bare ? number + whole.replaceFirst("^.*[\\d½¼¾⅜⅛⅝⅞]", "") : number;
  }

  private static boolean same(String metric, String us) {
    return QuantityWords.unitOf(metric).stream()
        .map(Unit::dimension)
        .anyMatch(
            d ->
                QuantityWords.read(metric, d)
                    .flatMap(m -> QuantityWords.read(us, d).map(u -> near(m.si(), u.si())))
                    .orElse(false));
  }

  private static boolean near(double metric, double us) {
    return Math.abs(metric - us) <= ROUND_NUMBERS * Math.abs(metric);
  }
}
