package lapline.content;

import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Strict YAML 1.2 in which every scalar is text, so that {@code 4:1} stays a mixing ratio and
 * {@code no} stays a word; the typing is done by whoever reads the node. Refused: duplicate keys,
 * aliases, several documents in one file.
 */
public final class YamlFile {
  private static final Map<String, String> KNOWN_MISTAKES =
      Map.of(
          "cannot start any token. (Do not use \\t(TAB) for indentation)",
          "indent with spaces, not with the tab key",
          "cannot start any token",
          "put the text in quotes",
          "mapping values are not allowed here",
          "put the text in quotes: it has a colon in it, or the line above lacks one");

  private YamlFile() {}

  /** The whole of a file. */
  public static Optional<YamlNode> read(ContentFile file, Problems problems) {
    return read(file.text(), 1, problems);
  }

  /**
   * YAML that stands inside another file.
   *
   * @param firstLine the line of the file on which {@code yaml} begins, counted from 1
   * @return the top node, always a map; empty when the YAML cannot be read, with the reason added
   */
  public static Optional<YamlNode> read(String yaml, int firstLine, Problems problems) {
    try {
      Optional<Node> top = new Compose(settings(problems.file())).composeString(yaml);
      if (top.isEmpty()) {
        problems.add(firstLine, "there is nothing here", "write its keys, one a line: key: value");
        return Optional.empty();
      }
      YamlNode node = new YamlTree(problems, firstLine - 1).grow(top.get());
      return node.isMap() ? Optional.of(node) : refuseTop(node, problems);
    } catch (MarkedYamlEngineException e) {
      int line = e.getProblemMark().map(Mark::getLine).orElse(0) + firstLine;
      problems.add(line, "this is not YAML: " + e.getProblem(), advice(e));
    } catch (YamlEngineException e) {
      problems.add(
          firstLine, "this is not YAML: " + e.getMessage(), "compare it with a file beside it");
    }
    return Optional.empty();
  }

  private static Optional<YamlNode> refuseTop(YamlNode node, Problems problems) {
    problems.add(node.line(), "keys are expected here", "write one a line, like title: Clear");
    return Optional.empty();
  }

  private static LoadSettings settings(String label) {
    return LoadSettings.builder().setLabel(label).setSchema(new FailsafeSchema()).build();
  }

  private static String advice(MarkedYamlEngineException e) {
    String problem = String.valueOf(e.getProblem());
    if (problem.contains("TAB") || problem.contains("\\t")) {
      return "indent with spaces, not with the tab key";
    }
    return KNOWN_MISTAKES.getOrDefault(
        problem, "look at the indentation and the quotes on this line and the one above");
  }
}
