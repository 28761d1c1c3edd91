package lapline.grading;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * What an instructor has put down about a panel without having decided yet; each instructor has
 * their own, and deciding ends it.
 *
 * @param at when it was last kept
 * @param marks mark by rubric item
 */
public record UnfinishedGrading(
    UUID attempt,
    UUID grader,
    Instant at,
    String remark,
    Map<String, Integer> marks,
    List<DefectMark> defects) {

  public UnfinishedGrading {
    marks = Map.copyOf(marks);
    defects = List.copyOf(defects);
  }
}
