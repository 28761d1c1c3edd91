package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;

/** Finds panels that a person may see: an apprentice their own, the others all of the workshop. */
@ApplicationScoped
public class FindAttempts {
  private AttemptRecords records;

  protected FindAttempts() {}

  @Inject
  public FindAttempts(AttemptRecords records) {
    this.records = records;
  }

  /** A panel that was judged, with the task as it was judged under. */
  public record Judged(Attempt attempt, PracticeTask task, PanelScore score) {}

  @Transactional
  public Attempt attempt(Person by, UUID id) {
    return seen(by, records.attempt(id));
  }

  @Transactional
  public Attempt bySheetCode(Person by, String code) {
    return seen(by, records.bySheetCode(code));
  }

  private static Attempt seen(Person by, Optional<Attempt> found) {
    Attempt attempt = found.orElseThrow(NotFoundException::new);
    attempt.mustBeSeenBy(by);
    return attempt;
  }

  /** The judgement of a panel; empty while it is a draft. */
  @Transactional
  public Optional<Judged> judged(Person by, UUID id) {
    Attempt attempt = attempt(by, id);
    return records
        .score(id)
        .map(score -> new Judged(attempt, records.taskAsJudged(id).orElseThrow(), score));
  }

  @Transactional
  public List<KeptReading> readings(Person by, UUID id) {
    attempt(by, id);
    return records.readings(id);
  }

  /** One page, newest first, of what this person may see of what is asked. */
  @Transactional
  public List<Attempt> page(Person by, AttemptQuery query) {
    return records.page(within(by, query));
  }

  /** A judged panel and those that the same person did before it under its task, newest first. */
  @Transactional
  public List<Attempt> upTo(Person by, Attempt last, int most) {
    return page(
        by,
        AttemptQuery.of(last.workshop(), 0, most)
            .by(last.person())
            .under(last.task())
            .begunBy(last.started())
            .in(Attempt.State.SCORED, Attempt.State.RETURNED, Attempt.State.ACCEPTED));
  }

  @Transactional
  public int count(Person by, AttemptQuery query) {
    return records.count(within(by, query));
  }

  private static AttemptQuery within(Person by, AttemptQuery query) {
    by.mustBeIn(query.workshop());
    if (!by.id().equals(query.person())) {
      by.mustBe(Role.INSTRUCTOR, Role.EXAMINER, Role.OWNER, Role.REGISTRAR);
    }
    return query;
  }
}
