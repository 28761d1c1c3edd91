package lapline.practice;

import java.util.List;

/**
 * Something short to do in the shop before the next panel, for one likely cause or several.
 *
 * @param minutes how long it takes, 1 to {@value #LONGEST}
 * @param meantFor ids of causes, as {@code arcing}; of a criterion, as {@code distance} or {@code
 *     distance.low}; with {@code task:} before it where it is for that task alone
 * @param caution what may hurt and what to wear or do; empty where nothing does
 * @param right how one sees that it is done, with a number
 */
public record Drill(
    String id,
    String title,
    int minutes,
    List<String> meantFor,
    String caution,
    List<String> steps,
    String right,
    String source) {
  public static final int LONGEST = 10;

  public Drill {
    meantFor = List.copyOf(meantFor);
    steps = List.copyOf(steps);
  }

  /**
   * @param finding its id, as {@code arcing} or {@code distance.low}
   */
  boolean isFor(String task, String finding) {
    int dot = finding.lastIndexOf('.');
    String criterion = dot < 0 ? finding : finding.substring(0, dot);
    return meantFor.stream()
        .map(m -> m.startsWith(task + ":") ? m.substring(task.length() + 1) : m)
        .anyMatch(m -> m.equals(finding) || m.equals(criterion));
  }
}
