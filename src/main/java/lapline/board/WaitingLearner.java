package lapline.board;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * Somebody whose panels for a skill wait for an instructor's eye.
 *
 * @param graded how many are accepted at the bench, of those that count
 * @param needed how many the rule asks for
 * @param since when the oldest of those that wait was scored
 * @param panels those that wait, oldest first
 */
public record WaitingLearner(
    UUID person,
    String name,
    String skill,
    int graded,
    int needed,
    Instant since,
    List<WaitingPanel> panels) {

  public WaitingLearner {
    panels = List.copyOf(panels);
  }

  public WaitingLearner(
      UUID person, String name, String skill, int graded, int needed, Instant since) {
    this(person, name, skill, graded, needed, since, List.of());
  }

  WaitingLearner with(List<WaitingPanel> waiting) {
    return new WaitingLearner(person, name, skill, graded, needed, since, waiting);
  }

  /** How many of them the rule still needs accepted at the bench. */
  public int missing() {
    return Math.min(needed - graded, panels.size());
  }
}
