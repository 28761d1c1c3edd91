package lapline.exams.bank;

import java.util.Set;
import lapline.content.YamlNode;
import lapline.content.units.BothUnitsCheck;

/**
 * Looks a question's wording over: every place for a value must have its value, and a quantity
 * given for both systems must be the same quantity.
 */
final class WordingCheck {
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
    BothUnitsCheck.pairs(node.text(), node::problem);
  }
}
