package lapline.grading;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * What one instructor saw on one panel that no gauge does: marks against described anchors, defects
 * placed on the panel drawing, a remark, and whether the panel is acceptable to the eye.
 *
 * @param marks mark by rubric item
 */
public record Grading(
    UUID id,
    UUID attempt,
    UUID workshop,
    UUID grader,
    Instant at,
    Decision decision,
    String remark,
    Map<String, Integer> marks,
    List<DefectMark> defects) {

  /** Whether the panel will do, to the eye. */
  public enum Decision {
    ACCEPTED,
    RETURNED
  }

  public Grading {
    marks = Map.copyOf(marks);
    defects = List.copyOf(defects);
  }
}
