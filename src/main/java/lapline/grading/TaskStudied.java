package lapline.grading;

import java.util.List;
import java.util.Optional;
import lapline.grading.TaskStudyRecords.Agreed;
import lapline.grading.TaskStudyRecords.Tries;
import lapline.judgement.agreement.CohensKappa;
import lapline.practice.PracticeTask;

/**
 * A practice task and what the workshop's panels say about it.
 *
 * @param criteria those that need a look first
 */
public record TaskStudied(
    PracticeTask task, Tries tries, List<CriterionStudied> criteria, Agreed agreed) {

  public TaskStudied {
    criteria = List.copyOf(criteria);
  }

  public long lookAt() {
    return criteria.stream().filter(CriterionStudied::needsALook).count();
  }

  /** Whether there are enough panels to say anything about a target. */
  public boolean isTelling() {
    return criteria.stream().anyMatch(c -> c.worth() != CriterionStudied.Worth.TOO_FEW);
  }

  /**
   * How far numbers and eye agree beyond chance; empty for too few panels, and where both were
   * always of one mind.
   */
  public Optional<CohensKappa> kappa() {
    return agreed.panels() < CriterionStudied.ENOUGH
        ? Optional.empty()
        : CohensKappa.of(
            new long[][] {
              {agreed.both(), agreed.numbersOnly()}, {agreed.eyeOnly(), agreed.neither()}
            });
  }
}
