package lapline.content;

import java.util.ArrayList;
import java.util.List;

/** The problems found so far in one content file, so that all of them are told at once. */
public final class Problems {
  private final String file;
  private final List<Problem> found = new ArrayList<>();

  public Problems(String file) {
    this.file = file;
  }

  public String file() {
    return file;
  }

  public void add(int line, String whatIsWrong, String whatToWrite) {
    found.add(new Problem(file, line, whatIsWrong, whatToWrite));
  }

  public boolean none() {
    return found.isEmpty();
  }

  /** In the order of the lines. */
  public List<Problem> all() {
    return found.stream().sorted().toList();
  }
}
