package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.UUID;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;

/**
 * Opens a scored panel again for more readings, as a doubtful verdict asks for, as long as no
 * instructor has decided on it.
 */
@ApplicationScoped
public class MeasureAgain {
  private AttemptRecords records;
  private Advances advances;

  protected MeasureAgain() {}

  @Inject
  public MeasureAgain(AttemptRecords records, Advances advances) {
    this.records = records;
    this.advances = advances;
  }

  /** The draft to go on with; a draft already open for the same task stays the only one. */
  @Transactional
  public Attempt run(Person by, UUID id) {
    Attempt scored = records.attemptToChange(id).orElseThrow(NotFoundException::new);
    scored.mustBeSeenBy(by);
    if (!scored.belongsTo(by.id())) {
      throw new NotAllowedException("entry.not-yours");
    }
    if (scored.state() != Attempt.State.SCORED) {
      throw new NotAllowedException("entry.decided");
    }
    if (records.openDraft(by.id(), scored.task()).isPresent()) {
      throw new NotAllowedException("entry.other-draft");
    }
    PracticeTask task = records.taskAsJudged(id).orElseThrow();
    records.reopen(id, Again.of(task, records.score(id).orElseThrow()));
    advances.tell(new LearnerAdvanced(scored.person(), scored.workshop(), scored.unit()));
    return records.attempt(id).orElseThrow();
  }
}
