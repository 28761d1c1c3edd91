package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;
import lapline.people.NotFoundException;
import lapline.people.Person;

/** Hands a paper in: it is marked and closed. Handing in twice gives the same result once. */
@ApplicationScoped
public class HandInPaper {
  private PaperRecords records;
  private Advances advances;
  private Clock clock;

  protected HandInPaper() {}

  @Inject
  public HandInPaper(PaperRecords records, Advances advances, Clock clock) {
    this.records = records;
    this.advances = advances;
    this.clock = clock;
  }

  @Transactional
  public PaperResult run(Person by, UUID id) {
    Sitting sitting = records.sittingToChange(id).orElseThrow(NotFoundException::new);
    sitting.mustBeWrittenBy(by);
    if (!sitting.isOpen()) {
      return records.result(id).orElseThrow(NotFoundException::new);
    }
    Paper paper = records.paper(id).orElseThrow(NotFoundException::new);
    PaperResult result = PaperMarking.mark(paper, records.answers(id));
    records.keepResult(sitting.handedIn(clock.instant(), result), result);
    advances.tell(new LearnerAdvanced(by.id(), by.workshop(), sitting.unit()));
    return result;
  }
}
