package lapline.content;

import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The id of a content file: its path without the content folder, the ordering prefixes, the ending
 * and the words that only sort files, so that re-ordering a course breaks nothing. {@code
 * curriculum/10-preparing/lesson.md} is {@code preparing}; {@code
 * curriculum/40-clear/tasks/10-two-coats.yaml} is {@code clear/two-coats}; {@code
 * question-banks/20-masking.yaml} is {@code masking}.
 */
public final class ContentId {
  private static final Pattern ORDER = Pattern.compile("^\\d+-");
  private static final Pattern ENDING = Pattern.compile("\\.[a-z]+$");
  private static final Set<String> SORTING_WORDS = Set.of("tasks", "drawings", "lesson", "unit");

  private ContentId() {}

  public static String of(String path) {
    return Arrays.stream(path.split("/"))
        .skip(1)
        .map(part -> ENDING.matcher(ORDER.matcher(part).replaceFirst("")).replaceFirst(""))
        .filter(part -> !SORTING_WORDS.contains(part))
        .collect(Collectors.joining("/"));
  }
}
