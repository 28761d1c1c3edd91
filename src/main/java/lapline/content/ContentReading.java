package lapline.content;

import java.util.List;
import java.util.Optional;

/**
 * What became of reading a content file: a value that may be used only when there are no problems.
 *
 * @param value null when the file is too broken to make anything of
 */
public record ContentReading<T>(T value, List<Problem> problems) {

  public ContentReading {
    problems = List.copyOf(problems);
  }

  public static <T> ContentReading<T> of(T value, Problems problems) {
    return new ContentReading<>(value, problems.all());
  }

  public static <T> ContentReading<T> broken(Problems problems) {
    return new ContentReading<>(null, problems.all());
  }

  /** The value if nothing at all is wrong with it: a half-right lesson teaches the wrong half. */
  public Optional<T> usable() {
    return problems.isEmpty() ? Optional.ofNullable(value) : Optional.empty();
  }
}
