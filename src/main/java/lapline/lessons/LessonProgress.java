package lapline.lessons;

import java.time.Instant;
import java.util.Set;

/**
 * How far one learner is in one lesson.
 *
 * @param read when it was read to its end; null when it was not
 * @param right ids of the checks answered right
 */
public record LessonProgress(Instant read, Set<String> right) {
  public static final LessonProgress NONE = new LessonProgress(null, Set.of());

  public LessonProgress {
    right = Set.copyOf(right);
  }

  /** Whether the lesson was read and each of its checks answered right. */
  public boolean finished(Lesson lesson) {
    return read != null && lesson.checks().stream().allMatch(c -> right.contains(c.id()));
  }
}
