package lapline.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lapline.lessons.NextStep;
import lapline.lessons.Unit;
import lapline.practice.Attempt;
import lapline.practice.PracticeTask;
import lapline.signoff.Evidence;
import lapline.signoff.SignOff;

/**
 * One unit as one learner sees it: what there is, what is done, what is next.
 *
 * @param examFrom when the exam can be sat again; null when at once, or when it is passed
 * @param panels the last panels of the unit, newest first
 * @param evidence what speaks for the unit's skill
 * @param signOff the latest sign-off; null where there is none
 * @param standing what it is worth now; null where there is none
 * @param settled whether it is good and its end still so far off that nothing is done about it
 */
public record UnitView(
    Unit unit,
    NextStep next,
    int checksRight,
    int checks,
    boolean lessonRead,
    Instant examFrom,
    List<PracticeTask> tasks,
    Attempt draft,
    List<Attempt> panels,
    Evidence evidence,
    SignOff signOff,
    SignOff.Standing standing,
    boolean settled) {

  /** The task of the next panel to take: the last of the unit. */
  public PracticeTask nextTask() {
    return tasks.get(tasks.size() - 1);
  }

  /** The latest panel of that task; empty where none of the last ones is of it. */
  public Optional<Attempt> lastOfNextTask() {
    return panels.stream().filter(a -> a.task().equals(nextTask().id())).findFirst();
  }

  /** When the sign-off ends or ended, while what is next is for its renewal; else null. */
  public Instant renewing() {
    boolean ends = standing == SignOff.Standing.GOOD || standing == SignOff.Standing.EXPIRED;
    return ends && !settled ? signOff.expires() : null;
  }

  /** Whether it has ended already. */
  public boolean ended() {
    return standing == SignOff.Standing.EXPIRED;
  }
}
