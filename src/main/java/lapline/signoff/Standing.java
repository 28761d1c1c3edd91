package lapline.signoff;

import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;

/**
 * Where one learner stands towards one skill, as kept for boards and waiting lists.
 *
 * @param onTheWay begun, not yet complete, and never signed off for it
 * @param panelsWaiting how many panels an instructor's eye has still to look at
 * @param waitingSince when the oldest of those was scored; null where none waits
 * @param readySince since when the evidence has been complete without a decision; null otherwise
 * @param holdsUntil when time alone may change it, a panel being too old then; null for never
 */
public record Standing(
    UUID person,
    UUID workshop,
    String skill,
    boolean lessonDone,
    boolean examPassed,
    boolean onTheWay,
    int panelsCounting,
    int panelsNeeded,
    int gradedCounting,
    int gradedNeeded,
    int panelsWaiting,
    Instant waitingSince,
    Instant readySince,
    Instant holdsUntil,
    Instant changed) {

  /**
   * What evidence comes to.
   *
   * @param wasSignedOff whether there ever was a sign-off of this skill, whatever became of it
   */
  static Standing of(
      Evidence evidence, UUID workshop, boolean wasSignedOff, Instant readySince, Instant now) {
    Skill.Rule rule = evidence.skill().rule();
    boolean begun = evidence.lessonDone() || evidence.examPassed() || evidence.counting() > 0;
    return new Standing(
        evidence.person(),
        workshop,
        evidence.skill().id(),
        evidence.lessonDone(),
        evidence.examPassed(),
        begun && readySince == null && !wasSignedOff,
        evidence.counting(),
        rule.accepted(),
        evidence.graded(),
        rule.graded(),
        evidence.waiting().size(),
        evidence.waiting().stream()
            .map(Evidence.Panel::scored)
            .min(Comparator.naturalOrder())
            .orElse(null),
        readySince,
        evidence.holdsUntil(now),
        now);
  }

  /** Whether somebody waits for a decision. */
  public boolean isReady() {
    return readySince != null;
  }

  /** The same when its skill has left the course: no rule makes it any older. */
  Standing withoutRule() {
    return new Standing(
        person,
        workshop,
        skill,
        lessonDone,
        examPassed,
        false,
        panelsCounting,
        panelsNeeded,
        gradedCounting,
        gradedNeeded,
        0,
        null,
        null,
        null,
        changed);
  }
}
