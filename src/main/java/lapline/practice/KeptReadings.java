package lapline.practice;

import java.time.Instant;
import java.util.List;

/**
 * The answer to a person who typed: what is kept, how it was understood, and what is wrong.
 *
 * @param revision of the attempt, now
 * @param cells what was sent and kept, what other windows changed meanwhile, and what is asked
 *     about otherwise than before because of it
 * @param problems everything that is wrong on the panel's record as it stands, cell by cell
 * @param questions what is asked back about readings that count as they stand
 * @param conflicts readings not kept, because another window had changed the same place
 * @param refused readings not kept for another reason
 */
public record KeptReadings(
    Instant at,
    long revision,
    List<KeptCell> cells,
    List<FieldProblem> problems,
    List<FieldProblem> questions,
    List<Conflict> conflicts,
    List<FieldProblem> refused) {

  /**
   * @param understood the value as it was understood, in the person's units; empty where it was not
   */
  public record KeptCell(String cell, String typed, long revision, String understood) {
    public KeptCell understoodAs(String words) {
      return new KeptCell(cell, typed, revision, words);
    }
  }

  /** Two windows wrote different values at one place; the person chooses. */
  public record Conflict(String cell, String yours, String theirs, long revision) {}

  /** Whether everything that was sent is kept. */
  public boolean complete() {
    return conflicts.isEmpty() && refused.isEmpty();
  }
}
