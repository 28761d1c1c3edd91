package lapline.content;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * One place in a YAML file: a text, a list, or a map of keys, with the line it stands on. Asking
 * for a value that is missing or of the wrong kind adds a problem and gives a harmless stand-in, so
 * that a reader goes on and all problems of a file are told at once; what was read is of use only
 * when no problem was added.
 */
public final class YamlNode {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");
  private static final Pattern WITH_UNIT = Pattern.compile(".*\\d\\s*[\\p{L}°%µ/\"].*");

  private final String text;
  private final List<YamlNode> items;
  private final Map<String, YamlNode> entries;
  private final int line;
  private final Problems problems;
  private final Set<String> asked = new HashSet<>();

  private YamlNode(
      String text,
      List<YamlNode> items,
      Map<String, YamlNode> entries,
      int line,
      Problems problems) {
    this.text = text;
    this.items = items;
    this.entries = entries;
    this.line = line;
    this.problems = problems;
  }

  static YamlNode text(String text, int line, Problems problems) {
    return new YamlNode(text.strip(), null, null, line, problems);
  }

  static YamlNode list(List<YamlNode> items, int line, Problems problems) {
    return new YamlNode(null, List.copyOf(items), null, line, problems);
  }

  static YamlNode map(Map<String, YamlNode> entries, int line, Problems problems) {
    return new YamlNode(
        null, null, Collections.unmodifiableMap(new LinkedHashMap<>(entries)), line, problems);
  }

  public int line() {
    return line;
  }

  public String file() {
    return problems.file();
  }

  public boolean isText() {
    return text != null;
  }

  public boolean isMap() {
    return entries != null;
  }

  public boolean isList() {
    return items != null;
  }

  /** Adds a problem at this node's line. */
  public void problem(String whatIsWrong, String whatToWrite) {
    problems.add(line, whatIsWrong, whatToWrite);
  }

  /** The keys of a map in their order; empty for anything else. */
  public List<String> keys() {
    return isMap() ? List.copyOf(entries.keySet()) : List.of();
  }

  /** The node at a key, whatever its kind; empty when the key is absent. */
  public Optional<YamlNode> at(String key) {
    asked.add(key);
    return isMap() ? Optional.ofNullable(entries.get(key)) : Optional.empty();
  }

  public boolean has(String key) {
    return at(key).isPresent();
  }

  // --- this node's own value

  /** This node's text; a problem when it is a list or a map, or empty. */
  public String text() {
    if (!isText()) {
      problem("one text is expected here", "write a word or a sentence, without keys or dashes");
      return "";
    }
    if (text.isEmpty()) {
      problem("this is empty", "write its text, or take the key away");
    }
    return text;
  }

  /** This node's items; a problem when it is no list. */
  public List<YamlNode> items() {
    if (!isList()) {
      problem("a list is expected here", "write each item on its own line after '- '");
      return List.of();
    }
    return items;
  }

  /** This node's number, such as {@code 0.25}; NaN and a problem when it is none. */
  public double number() {
    String written = text();
    if (written.isEmpty()) {
      return Double.NaN;
    }
    if (!NUMBER.matcher(written).matches()) {
      problem("'" + written + "' is not a number", "write digits with a point, like 2.5");
      return Double.NaN;
    }
    return Double.parseDouble(written);
  }

  /** This node's text where it must have a unit, such as {@code 3 to 5 in}. */
  public String quantityText() {
    String written = text();
    if (!written.isEmpty() && !WITH_UNIT.matcher(written).matches()) {
      problem(
          "'" + written + "' has no unit",
          "write the quantity with its unit, like 50 um or 3 to 5 in");
    }
    return written;
  }

  /** This node's texts, for a list of sentences or ids. */
  public List<String> texts() {
    return items().stream().map(YamlNode::text).toList();
  }

  // --- values at a key

  public String text(String key) {
    return required(key).map(YamlNode::text).orElse("");
  }

  public Optional<String> optionalText(String key) {
    return at(key).map(YamlNode::text);
  }

  public double number(String key) {
    return required(key).map(YamlNode::number).orElse(Double.NaN);
  }

  public double number(String key, double ifAbsent) {
    return at(key).map(YamlNode::number).orElse(ifAbsent);
  }

  /** A whole number; 0 and a problem when it is none. */
  public int wholeNumber(String key) {
    return required(key).map(YamlNode::wholeNumber).orElse(0);
  }

  public int wholeNumber(String key, int ifAbsent) {
    return at(key).map(YamlNode::wholeNumber).orElse(ifAbsent);
  }

  private int wholeNumber() {
    double number = number();
    if (number != Math.rint(number) && !Double.isNaN(number)) {
      problem("'" + text + "' is not a whole number", "write it without a fraction, like 3");
    }
    return (int) number;
  }

  /** {@code yes} or {@code no}, and no other word. */
  public boolean yesNo(String key) {
    return required(key).map(YamlNode::yesNo).orElse(false);
  }

  public boolean yesNo(String key, boolean ifAbsent) {
    return at(key).map(YamlNode::yesNo).orElse(ifAbsent);
  }

  private boolean yesNo() {
    String written = text();
    if (!written.equals("yes") && !written.equals("no") && !written.isEmpty()) {
      problem("'" + written + "' is neither yes nor no", "write yes or no");
    }
    return written.equals("yes");
  }

  /** The items at a key; a problem when the key is absent. */
  public List<YamlNode> list(String key) {
    return required(key).map(YamlNode::items).orElse(List.of());
  }

  /** The items at a key; none when the key is absent. */
  public List<YamlNode> optionalList(String key) {
    return at(key).map(YamlNode::items).orElse(List.of());
  }

  public List<String> texts(String key) {
    return required(key).map(YamlNode::texts).orElse(List.of());
  }

  public List<String> optionalTexts(String key) {
    return at(key).map(YamlNode::texts).orElse(List.of());
  }

  /** The map at a key; an empty stand-in and a problem when it is absent or no map. */
  public YamlNode map(String key) {
    return required(key).flatMap(YamlNode::asMap).orElseGet(this::standIn);
  }

  /** Told once that the map is missing, nobody needs to hear that each of its keys is too. */
  private YamlNode standIn() {
    return map(Map.of(), line, new Problems(problems.file()));
  }

  public Optional<YamlNode> optionalMap(String key) {
    return at(key).flatMap(YamlNode::asMap);
  }

  private Optional<YamlNode> asMap() {
    if (!isMap()) {
      problem("keys are expected here", "write one a line, further in, like width: 600 mm");
      return Optional.empty();
    }
    return Optional.of(this);
  }

  public String quantityText(String key) {
    return required(key).map(YamlNode::quantityText).orElse("");
  }

  public Optional<String> optionalQuantityText(String key) {
    return at(key).map(YamlNode::quantityText);
  }

  /**
   * One of a set of words, such as an enum's names in lower case.
   *
   * @return the first of them, and a problem, when it is another word
   */
  public String oneOf(String key, List<String> words) {
    Optional<YamlNode> node = required(key);
    String written = node.map(YamlNode::text).orElse(words.get(0));
    if (!words.contains(written)) {
      node.orElse(this)
          .problem(
              "'" + key + ": " + written + "' is not known",
              "write one of: " + String.join(", ", words));
      return words.get(0);
    }
    return written;
  }

  /**
   * Adds a problem for every key, here and further in, that nobody asked for: it is misspelt or
   * does nothing. To be called when the reader has asked for all it knows.
   */
  public void refuseOtherKeys() {
    if (isList()) {
      items.forEach(YamlNode::refuseOtherKeys);
    }
    if (isMap()) {
      entries.forEach(this::refuseUnasked);
    }
  }

  private void refuseUnasked(String key, YamlNode value) {
    if (asked.contains(key)) {
      value.refuseOtherKeys();
    } else {
      String known = String.join(", ", new TreeSet<>(asked));
      value.problem("'" + key + "' is not a key here", "take it away or write one of: " + known);
    }
  }

  private Optional<YamlNode> required(String key) {
    Optional<YamlNode> node = at(key);
    if (node.isEmpty() && isMap()) {
      problem("'" + key + "' is missing", "add a line " + key + ": …");
    }
    if (!isMap()) {
      asMap();
    }
    return node;
  }
}
