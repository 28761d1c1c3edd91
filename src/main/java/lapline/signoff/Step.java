package lapline.signoff;

import java.time.Instant;
import java.util.UUID;

/**
 * One step that was taken about a person and a skill; steps are only ever added.
 *
 * @param signOff null for a decision of 'not yet'
 * @param evidence the evidence and rule as they were then, as JSON
 */
public record Step(
    UUID id,
    UUID workshop,
    UUID person,
    String skill,
    UUID signOff,
    Kind kind,
    UUID by,
    Instant at,
    String reason,
    String evidence) {

  /** What was done. */
  public enum Kind {
    GRANTED,
    NOT_YET,
    SUSPENDED,
    RESUMED,
    WITHDRAWN
  }
}
