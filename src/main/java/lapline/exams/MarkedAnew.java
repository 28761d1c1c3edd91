package lapline.exams;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/**
 * A paper that was marked anew since one of its questions was set aside or brought back, with how
 * it stood before. Such records are only ever added.
 *
 * @param item the question it was about
 * @param leftOut true where it was taken out, false where it counts again
 * @param reason why it was set aside; empty where it counts again
 */
public record MarkedAnew(
    UUID id,
    UUID paper,
    Instant at,
    UUID by,
    String item,
    boolean leftOut,
    String reason,
    Mark before,
    Mark after) {

  /**
   * What a paper is worth.
   *
   * @param score share of the marks that count, 0 to 1
   * @param without ids of the items that do not count
   */
  public record Mark(double score, boolean passed, Set<String> without) {
    public Mark {
      without = Set.copyOf(without);
    }
  }
}
