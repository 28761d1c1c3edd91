package lapline.content;

/**
 * Something wrong in a hand-written content file, told to the person who can mend it: where, what,
 * and what to write instead.
 *
 * @param line counted from 1; 0 when it concerns the file as a whole
 */
public record Problem(String file, int line, String whatIsWrong, String whatToWrite)
    implements Comparable<Problem> {

  @Override
  public int compareTo(Problem other) {
    int byFile = file.compareTo(other.file);
    return byFile != 0 ? byFile : Integer.compare(line, other.line);
  }

  /** {@code file:line: what is wrong; what to write instead}. */
  @Override
  public String toString() {
    return file + ":" + line + ": " + whatIsWrong + "; " + whatToWrite;
  }
}
