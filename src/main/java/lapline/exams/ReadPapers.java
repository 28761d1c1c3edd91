package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  /**
   * A paper that was marked.
   *
   * @param result as it counts now
   * @param without ids of the items that no longer count
   * @param anew how it was marked anew since, the newest first
   */
  public record Marked(
      Sitting sitting,
      Paper paper,
      PaperResult result,
      Set<String> without,
      List<MarkedAnew> anew) {}

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
    return records.result(id).map(result -> marked(sitting, result));
  }

  private Marked marked(Sitting sitting, PaperResult handedIn) {
    Set<String> without = records.without(sitting.id());
    return new Marked(
        sitting,
        paper(sitting.id()),
        PaperMarking.without(handedIn, without),
        without,
        records.markedAnew(sitting.id()));
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
