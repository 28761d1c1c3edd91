package lapline.lessons;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.content.units.NumberAndUnit;

/** Reads a check from the YAML of a {@code ```check} block in a lesson. */
final class CheckReader {
  private static final String ID_FORM = "[a-z][a-z0-9-]*";

  private CheckReader() {}

  /**
   * @param firstLine of the YAML, in the lesson's file
   * @param taken ids of the checks before it in the lesson; this one's is added
   */
  static Optional<Check> read(String yaml, int firstLine, Set<String> taken, Problems problems) {
    return YamlFile.read(yaml, firstLine, problems).map(node -> check(node, taken));
  }

  private static Check check(YamlNode node, Set<String> taken) {
    String id = node.text("id");
    String question = shown(node, "question");
    List<Check.Choice> choices = node.list("choices").stream().map(CheckReader::choice).toList();
    node.refuseOtherKeys();
    if (!id.matches(ID_FORM) && !id.isEmpty()) {
      node.problem("the id '" + id + "' has other signs", "use small letters, digits and hyphens");
    }
    if (!taken.add(id)) {
      node.problem("another check of this lesson is '" + id + "' too", "give it an id of its own");
    }
    refuseUnanswerable(node, choices);
    return new Check(id, question, choices);
  }

  private static void refuseUnanswerable(YamlNode node, List<Check.Choice> choices) {
    if (choices.size() < 2) {
      node.problem("there are fewer than two choices", "add the mistakes people really make");
    }
    if (choices.stream().noneMatch(Check.Choice::right)) {
      node.problem("no choice is right", "add right: yes to the right one");
    }
  }

  private static Check.Choice choice(YamlNode node) {
    return new Check.Choice(
        shown(node, "text"), node.yesNo("right", false), shown(node, "because"));
  }

  private static String shown(YamlNode node, String key) {
    return NumberAndUnit.together(node.text(key));
  }
}
