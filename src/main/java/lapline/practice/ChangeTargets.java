package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Puts a workshop's own target, from its coating's data sheet, in the place of the task file's, and
 * keeps who, when and why. Panels judged before keep the target they were judged under.
 */
@ApplicationScoped
public class ChangeTargets {
  private TargetRecords records;
  private PracticeTasks tasks;
  private Clock clock;

  protected ChangeTargets() {}

  @Inject
  public ChangeTargets(TargetRecords records, PracticeTasks tasks, Clock clock) {
    this.records = records;
    this.tasks = tasks;
    this.clock = clock;
  }

  /**
   * @return what is wrong with the fields {@code target}, {@code sheet}, {@code reason}; empty when
   *     the target is now in force
   */
  @Transactional
  public List<FieldProblem> run(
      Person by, String taskId, String criterionId, String target, String sheet, String reason) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    Criterion criterion =
        tasks
            .find(taskId)
            .flatMap(t -> t.criterion(criterionId))
            .orElseThrow(NotFoundException::new);
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
              TargetText.withUnit(target, criterion.dimension(), by.units()),
              sheet.strip(),
              reason.strip(),
              by.id(),
              now,
              null,
              null));
    }
    return problems;
  }

  /** Goes back to the task file's own target. */
  @Transactional
  public void retire(Person by, String taskId, String criterionId) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    retireFormer(by, taskId, criterionId, clock.instant());
  }

  @Transactional
  public List<TargetOverride> history(Person by, String taskId) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR, Role.OWNER, Role.EXAMINER);
    return records.history(by.workshop(), taskId);
  }

  private void retireFormer(Person by, String taskId, String criterionId, Instant now) {
    records.inForce(by.workshop(), taskId).stream()
        .filter(o -> o.criterion().equals(criterionId))
        .forEach(o -> records.retire(o.id(), by.id(), now));
  }

  private static List<FieldProblem> problems(
      Person by, Criterion criterion, String target, String sheet, String reason) {
    List<FieldProblem> problems = new ArrayList<>();
    if (target.length() > 50
        || TargetText.read(target, criterion.dimension(), by.units()).isEmpty()) {
      problems.add(new FieldProblem("target", "entry.targets.not-a-range", List.of(target)));
    }
    missing(problems, "sheet", sheet, 200);
    missing(problems, "reason", reason, 500);
    return problems;
  }

  private static void missing(List<FieldProblem> problems, String field, String text, int most) {
    if (text.isBlank() || text.strip().length() > most) {
      problems.add(new FieldProblem(field, "entry.targets." + field, List.of("" + most)));
    }
  }
}
