package lapline.content;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Turns the parser's nodes into ours, which know the line they stand on. */
final class YamlTree {
  private final Problems problems;
  private final int linesBefore;
  private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  YamlTree(Problems problems, int linesBefore) {
    this.problems = problems;
    this.linesBefore = linesBefore;
  }

  YamlNode grow(Node node) {
    return grow(node, line(node));
  }

  private YamlNode grow(Node node, int line) {
    if (!seen.add(node)) {
      problems.add(
          line,
          "this is used again elsewhere through an alias (*name)",
          "write it out in both places");
      return YamlNode.text("", line, problems);
    }
    if (node instanceof MappingNode map) {
      return YamlNode.map(entries(map), line, problems);
    }
    if (node instanceof SequenceNode list) {
      return YamlNode.list(list.getValue().stream().map(this::grow).toList(), line, problems);
    }
    return YamlNode.text(((ScalarNode) node).getValue(), line, problems);
  }

  private Map<String, YamlNode> entries(MappingNode map) {
    Map<String, YamlNode> entries = new LinkedHashMap<>();
    for (NodeTuple tuple : map.getValue()) {
      int line = line(tuple.getKeyNode());
      if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
        problems.add(line, "a key must be a word", "write it like title: Clear");
      } else if (entries.containsKey(key.getValue())) {
        problems.add(line, "'" + key.getValue() + "' stands here twice", "keep one of the two");
      } else {
        entries.put(key.getValue(), valueOf(tuple, line));
      }
    }
    return entries;
  }

  /**
   * A map or a list begins below its key, and an empty value nowhere, but people look for it at the
   * key.
   */
  private YamlNode valueOf(NodeTuple tuple, int keyLine) {
    Node value = tuple.getValueNode();
    boolean filled = value instanceof ScalarNode scalar && !scalar.getValue().isEmpty();
    return grow(value, filled ? line(value) : keyLine);
  }

  private int line(Node node) {
    return node.getStartMark().map(Mark::getLine).orElse(0) + 1 + linesBefore;
  }
}
