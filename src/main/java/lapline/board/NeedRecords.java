package lapline.board;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import lapline.people.LearnerAdvanced;

/** What is kept of who needs an instructor; lists come by the page. */
public interface NeedRecords {

  /** Somebody whose last panels of a task were missed alike. */
  record Stuck(String task, String finding, int panels, Instant last) {}

  /** A panel that was begun, scored, and sent back. */
  record Returned(UUID attempt, String task, Instant begun, Instant at, String remark) {}

  /** A person's latest scored panels of a unit, latest first. */
  List<LastPanel> lastPanels(UUID person, String unit, int most);

  /** Keeps this of the person and unit, in the place of what was kept before. */
  void keep(LearnerAdvanced who, List<Stuck> stuck, List<Returned> returned);

  /**
   * Who waits for an eye on panels of a skill, longest first.
   *
   * @param instructor whose own panels are left out
   */
  List<WaitingLearner> waiting(UUID workshop, UUID instructor, int first, int size);

  /** All panels that wait of these people, oldest first. */
  List<WaitingPanel> waitingPanels(Collection<UUID> people);

  /** How many people and skills wait, and how many panels they are. */
  WaitingCount countWaiting(UUID workshop, UUID instructor);

  /** How much waits for an eye. */
  record WaitingCount(long learners, long panels) {}

  /** Who missed the last one no longer ago than this, longest ago first. */
  List<StuckLearner> stuck(UUID workshop, Instant since, int first, int size);

  int countStuck(UUID workshop, Instant since);

  /** Panels sent back, after which no other of the task was begun, longest ago first. */
  List<ReturnedPanel> returned(UUID workshop, int first, int size);

  int countReturned(UUID workshop);
}
