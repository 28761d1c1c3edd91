package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;

/** Reads papers that a person may see: an apprentice their own, who teaches or judges all. */
@ApplicationScoped
public class ReadPapers {
  private PaperRecords records;

  protected ReadPapers() {}

  @Inject
  public ReadPapers(PaperRecords records) {
    this.records = records;
  }

  /** A paper with what is written on it. */
  public record Written(Sitting sitting, Paper paper, Map<String, String> answers) {}

  /** A paper that was marked. */
  public record Marked(Sitting sitting, Paper paper, PaperResult result) {}

  /** The paper of this unit that the person is sitting. */
  @Transactional
  public Optional<Written> open(Person by, String unit) {
    return records.open(by.id(), unit).map(this::written);
  }

  /** The paper, for the person who writes on it. */
  @Transactional
  public Written toWrite(Person by, UUID id) {
    Sitting sitting = records.sitting(id).orElseThrow(NotFoundException::new);
    sitting.mustBeWrittenBy(by);
    return written(sitting);
  }

  private Written written(Sitting sitting) {
    return new Written(sitting, paper(sitting.id()), records.answers(sitting.id()));
  }

  /** Empty while the paper is being sat: until then nobody sees the key. */
  @Transactional
  public Optional<Marked> marked(Person by, UUID id) {
    Sitting sitting = records.sitting(id).orElseThrow(NotFoundException::new);
    sitting.mustBeSeenBy(by);
    return records.result(id).map(result -> new Marked(sitting, paper(id), result));
  }

  /** What the person handed in for a unit, the newest first. */
  @Transactional
  public List<Sitting> handedIn(Person by, String unit, int size) {
    return records.handedIn(by.id(), unit, size);
  }

  private Paper paper(UUID id) {
    return records.paper(id).orElseThrow(NotFoundException::new);
  }
}
