package lapline.grading;

import java.util.List;
import java.util.UUID;

/** What the panels of a workshop say about its practice tasks, added up where they are kept. */
public interface TaskStudyRecords {

  /** How one task went. A try is a scored panel; a first try is a person's first at this task. */
  record Tries(
      String task,
      long panels,
      long people,
      long firstTries,
      long firstAccepted,
      long laterTries,
      long laterAccepted) {}

  /**
   * How one criterion came out, over the panels since its target was last changed.
   *
   * @param notJudged panels on which something for it was missing
   * @param uncertaintyShare mean of four standard uncertainties over the target's width; null where
   *     no panel says it
   * @param saying how many panels do
   */
  record Verdicts(
      String criterion,
      long met,
      long doubtful,
      long missed,
      long notJudged,
      Double uncertaintyShare,
      long saying) {

    public long judged() {
      return met + doubtful + missed;
    }
  }

  /**
   * How the numbers and the instructor's last word on a panel went together.
   *
   * @param both accepted by its numbers and by the instructor
   * @param numbersOnly accepted by its numbers, and returned
   * @param eyeOnly not accepted by its numbers, and yet by the instructor
   * @param neither neither
   */
  record Agreed(long both, long numbersOnly, long eyeOnly, long neither) {

    public long panels() {
      return both + numbersOnly + eyeOnly + neither;
    }
  }

  /** Every task that panels of the workshop were done for. */
  List<Tries> tries(UUID workshop);

  /** Every criterion that panels of this version of a task were judged by. */
  List<Verdicts> verdicts(UUID workshop, String task, String version);

  Agreed agreed(UUID workshop, String task);
}
