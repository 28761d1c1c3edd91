package lapline.board;

import java.time.Instant;
import java.util.UUID;

/**
 * A scored panel, as far as it tells whether its apprentice needs a hand.
 *
 * @param finding what stood first among its findings; null where there was none
 * @param returned whether an instructor sent it back
 */
public record LastPanel(
    UUID attempt,
    String task,
    Instant begun,
    Instant scored,
    boolean accepted,
    String finding,
    boolean returned) {

  /** Whether it was missed, and in this way. */
  boolean isMissedBy(String cause) {
    return !accepted && cause.equals(finding);
  }
}
