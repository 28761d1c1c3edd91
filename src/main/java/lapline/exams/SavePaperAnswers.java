package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;

/** Keeps what is written on a paper, as typed, while it is being sat. */
@ApplicationScoped
public class SavePaperAnswers {
  /** Longer than any answer; the page's fields allow no more. */
  static final int LONGEST = 200;

  private PaperRecords records;
  private Clock clock;

  protected SavePaperAnswers() {}

  @Inject
  public SavePaperAnswers(PaperRecords records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  /**
   * @param changes what was changed, by place; empty text takes an answer back. Places that the
   *     paper does not have are passed over
   * @return when it was kept; empty when the paper had been handed in already, and nothing was kept
   */
  @Transactional
  public Optional<Instant> run(Person by, UUID id, Map<String, String> changes) {
    Sitting sitting = records.sittingToChange(id).orElseThrow(NotFoundException::new);
    sitting.mustBeWrittenBy(by);
    if (!sitting.isOpen()) {
      return Optional.empty();
    }
    Instant now = clock.instant();
    Map<String, String> kept = onPaper(id, changes);
    if (!kept.isEmpty()) {
      records.keep(id, kept, now);
    }
    return Optional.of(now);
  }

  private Map<String, String> onPaper(UUID id, Map<String, String> changes) {
    Set<String> cells = records.paper(id).orElseThrow(NotFoundException::new).cells();
    Map<String, String> kept = new LinkedHashMap<>();
    changes.forEach(
        (cell, typed) -> {
          if (cells.contains(cell)) {
            kept.put(cell, typed.length() > LONGEST ? typed.substring(0, LONGEST) : typed);
          }
        });
    return kept;
  }
}
