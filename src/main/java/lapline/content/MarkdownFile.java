package lapline.content;

import java.util.Optional;

/**
 * A hand-written page: a few facts as YAML between two lines of {@code ---}, then prose.
 *
 * @param facts the front matter
 * @param body the prose
 * @param bodyLine the line of the file on which the prose begins, counted from 1
 */
public record MarkdownFile(YamlNode facts, String body, int bodyLine) {
  private static final String FENCE = "---";

  /** Empty, with the reason added, when the front matter is missing or cannot be read. */
  public static Optional<MarkdownFile> read(ContentFile file, Problems problems) {
    String text = file.text();
    int end =
        text.startsWith(FENCE + "\n") ? text.indexOf("\n" + FENCE + "\n", FENCE.length()) : -1;
    if (end < 0) {
      problems.add(
          1,
          "the facts at the top are missing or not closed",
          "begin the file with a line of ---, the facts, and another line of ---");
      return Optional.empty();
    }
    int bodyStart = end + FENCE.length() + 2;
    String yaml = text.substring(FENCE.length() + 1, Math.max(end, FENCE.length() + 1));
    int bodyLine = 1 + (int) text.substring(0, bodyStart).chars().filter(c -> c == '\n').count();
    return YamlFile.read(yaml, 2, problems)
        .map(facts -> new MarkdownFile(facts, text.substring(bodyStart), bodyLine));
  }
}
