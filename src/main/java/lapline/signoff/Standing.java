package lapline.signoff;

import java.time.Instant;
import java.util.UUID;

/**
 * Where one learner stands towards one skill, as kept for boards and waiting lists.
 *
 * @param readySince since when the evidence has been complete without a decision; null otherwise
 */
public record Standing(
    UUID person,
    UUID workshop,
    String skill,
    boolean lessonDone,
    boolean examPassed,
    int panelsCounting,
    int panelsNeeded,
    int gradedCounting,
    int gradedNeeded,
    Instant readySince,
    Instant changed) {

  /** Whether somebody waits for a decision. */
  public boolean isReady() {
    return readySince != null;
  }

  /** The same with nobody waiting for a decision. */
  Standing decided(Instant at) {
    return new Standing(
        person,
        workshop,
        skill,
        lessonDone,
        examPassed,
        panelsCounting,
        panelsNeeded,
        gradedCounting,
        gradedNeeded,
        null,
        at);
  }
}
