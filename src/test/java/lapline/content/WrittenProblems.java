package lapline.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is wrong in the hand-written files of the course, told all at once, each with its line. */
public final class WrittenProblems {
  private final ContentFiles files;
  private final List<Problem> problems;

  public WrittenProblems(ContentFiles files, List<Problem> found) {
    this.files = files;
    this.problems = new ArrayList<>(found);
  }

  /**
   * @param near words of the line it concerns, such as {@code id: two-to-one}; empty for the file
   */
  public void add(String path, String near, String whatIsWrong, String whatToWrite) {
    problems.add(new Problem(path, lineOf(path, near), whatIsWrong, whatToWrite));
  }

  /** The same at a line that is known. */
  public void add(String path, int line, String whatIsWrong, String whatToWrite) {
    problems.add(new Problem(path, line, whatIsWrong, whatToWrite));
  }

  /** Passes when nothing was found; else fails with all of it. */
  public void none() {
    assertThat(problems.stream().sorted().map(Problem::toString).collect(Collectors.joining("\n")))
        .isEmpty();
  }

  public String text(String path) {
    return files.read(path, new Problems(path)).map(ContentFile::text).orElse("");
  }

  private int lineOf(String path, String near) {
    List<String> lines = text(path).lines().toList();
    for (int i = 0; i < lines.size() && !near.isEmpty(); i++) {
      if (lines.get(i).contains(near)) {
        return i + 1;
      }
    }
    return 0;
  }
}
