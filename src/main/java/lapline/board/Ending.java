package lapline.board;

import java.time.Instant;
import java.util.UUID;

/**
 * A sign-off that ends or has ended, and how far its person is with the evidence for the next.
 *
 * @param panelsCounting 0 where nothing is kept
 */
public record Ending(
    UUID person,
    String name,
    String skill,
    Instant expires,
    Integer panelsCounting,
    Integer panelsNeeded,
    Integer gradedCounting,
    Integer gradedNeeded) {

  /** Whether the panels for a renewal are there already. */
  public boolean isReady() {
    return panelsNeeded != null && panelsCounting >= panelsNeeded && gradedCounting >= gradedNeeded;
  }
}
