package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.trade.measure.TargetRange;

/**
 * Puts a workshop's own target, from its coating's data sheet, in the place of the task file's, and
 * keeps who, when and why. Panels judged before keep the target they were judged under.
 */
@ApplicationScoped
public class ChangeTargets {
  /** Key of the refusal that somebody has set another target since. */
  public static final String CHANGED_SINCE = "targets.wrong.changed-since";

  private static final String STILL_ANOTHER = "targets.wrong.still-another";

  private TargetRecords records;
  private PracticeTasks tasks;
  private PeopleRecords people;
  private Clock clock;

  protected ChangeTargets() {}

  @Inject
  public ChangeTargets(
      TargetRecords records, PracticeTasks tasks, PeopleRecords people, Clock clock) {
    this.records = records;
    this.tasks = tasks;
    this.people = people;
    this.clock = clock;
  }

  /**
   * @param seen the workshop's own target that the page showed; null where the course's held. One
   *     that was set since is told first.
   * @return what is wrong with the fields {@code target}, {@code sheet}, {@code reason}; empty when
   *     the target is now in force
   */
  @Transactional
  public List<FieldProblem> run(
      Person by,
      String taskId,
      String criterionId,
      String target,
      String sheet,
      String reason,
      UUID seen) {
    criterion(by, taskId, criterionId);
    people.hold(by.workshop());
    Optional<TargetOverride> now = own(by, taskId, criterionId);
    return Objects.equals(now.map(TargetOverride::id).orElse(null), seen)
        ? run(by, taskId, criterionId, target, sheet, reason)
        : List.of(changedSince(now));
  }

  private FieldProblem changedSince(Optional<TargetOverride> now) {
    return now.map(o -> since(CHANGED_SINCE, o))
        .orElseGet(() -> new FieldProblem("target", CHANGED_SINCE + ".back", List.of()));
  }

  private FieldProblem since(String key, TargetOverride other) {
    String who = people.names(List.of(other.madeBy())).get(other.madeBy());
    return new FieldProblem("target", key, List.of(who, other.target()));
  }

  /** As above, for somebody who has just looked. */
  @Transactional
  public List<FieldProblem> run(
      Person by, String taskId, String criterionId, String target, String sheet, String reason) {
    Criterion criterion = criterion(by, taskId, criterionId);
    people.hold(by.workshop());
    List<FieldProblem> problems = problems(by, criterion, target, sheet, reason);
    if (problems.isEmpty()) {
      Instant now = clock.instant();
      retireFormer(by, taskId, criterionId, now);
      records.add(
          new TargetOverride(
              UUID.randomUUID(),
              by.workshop(),
              taskId,
              criterionId,
              TargetText.withUnit(target, criterion.spoken(), by.units()),
              sheet.strip(),
              reason.strip(),
              by.id(),
              now,
              null,
              null));
    }
    return problems;
  }

  /** What is wrong with the fields, without changing anything: to be asked before it is set. */
  public List<FieldProblem> look(
      Person by, String taskId, String criterionId, String target, String sheet, String reason) {
    return problems(by, criterion(by, taskId, criterionId), target, sheet, reason);
  }

  /**
   * Goes back to the task file's own target.
   *
   * @param seen the workshop's own target that the page showed; another one that was set since is
   *     told first and stays
   * @return what stands in the way; empty when the task file's target holds
   */
  @Transactional
  public Optional<FieldProblem> retire(Person by, String taskId, String criterionId, UUID seen) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    people.hold(by.workshop());
    Optional<TargetOverride> another =
        own(by, taskId, criterionId).filter(o -> !o.id().equals(seen));
    if (another.isEmpty()) {
      retireFormer(by, taskId, criterionId, clock.instant());
    }
    return another.map(o -> since(STILL_ANOTHER, o));
  }

  @Transactional
  public List<TargetOverride> history(Person by, String taskId) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR, Role.OWNER, Role.EXAMINER);
    return records.history(by.workshop(), taskId);
  }

  /** A criterion whose target a data sheet can say; a rule to be kept or a choice is none. */
  public Criterion criterion(Person by, String taskId, String criterionId) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    return tasks
        .find(taskId)
        .flatMap(t -> t.criterion(criterionId))
        .filter(c -> c.hasRange(tasks.measurands()))
        .orElseThrow(NotFoundException::new);
  }

  /** The workshop's own target that is in force. */
  private Optional<TargetOverride> own(Person by, String taskId, String criterionId) {
    return records.inForce(by.workshop(), taskId).stream()
        .filter(o -> o.criterion().equals(criterionId))
        .findFirst();
  }

  private void retireFormer(Person by, String taskId, String criterionId, Instant now) {
    own(by, taskId, criterionId).ifPresent(o -> records.retire(o.id(), by.id(), now));
  }

  private List<FieldProblem> problems(
      Person by, Criterion criterion, String target, String sheet, String reason) {
    TargetRange possible = PossibleTarget.of(criterion, tasks.measurands());
    List<FieldProblem> problems = new ArrayList<>();
    PossibleTarget.problem("target", target, possible, criterion.spoken(), by.units())
        .ifPresent(problems::add);
    missing(problems, "sheet", sheet, 200);
    missing(problems, "reason", reason, 500);
    return problems;
  }

  private static void missing(List<FieldProblem> problems, String field, String text, int most) {
    if (text.isBlank() || text.strip().length() > most) {
      problems.add(new FieldProblem(field, "targets.wrong." + field, List.of("" + most)));
    }
  }
}
