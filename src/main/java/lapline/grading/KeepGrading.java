package lapline.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.AttemptRecords;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.RubricItem;

/**
 * Keeps what an instructor puts down while looking at a panel, so that a lost session, a photograph
 * or another window takes nothing away.
 */
@ApplicationScoped
public class KeepGrading {
  private AttemptRecords attempts;
  private GradingRecords gradings;
  private Clock clock;

  protected KeepGrading() {}

  @Inject
  public KeepGrading(AttemptRecords attempts, GradingRecords gradings, Clock clock) {
    this.attempts = attempts;
    this.gradings = gradings;
    this.clock = clock;
  }

  /** What this instructor has put down about the panel and not decided yet. */
  @Transactional
  public Optional<UnfinishedGrading> of(Person by, UUID attempt) {
    seen(by, attempts.attempt(attempt));
    return gradings.unfinished(attempt, by.id());
  }

  /** Keeps remark and marks; the defects stay as they are. */
  @Transactional
  public UnfinishedGrading run(Person by, UUID attempt, String remark, Map<String, Integer> marks) {
    seen(by, attempts.attemptToChange(attempt));
    List<DefectMark> placed =
        gradings.unfinished(attempt, by.id()).map(UnfinishedGrading::defects).orElse(List.of());
    return keep(by, attempt, remark, marks, placed);
  }

  @Transactional
  public UnfinishedGrading run(
      Person by,
      UUID attempt,
      String remark,
      Map<String, Integer> marks,
      List<DefectMark> defects) {
    seen(by, attempts.attemptToChange(attempt));
    return keep(by, attempt, remark, marks, defects);
  }

  private UnfinishedGrading keep(
      Person by,
      UUID attempt,
      String remark,
      Map<String, Integer> marks,
      List<DefectMark> defects) {
    String within = remark.substring(0, Math.min(remark.length(), GradePanel.LONGEST_REMARK));
    UnfinishedGrading kept =
        new UnfinishedGrading(
            attempt, by.id(), clock.instant(), within, known(attempt, marks), defects);
    gradings.keep(kept);
    return kept;
  }

  /** The marks of the task's own items. */
  private Map<String, Integer> known(UUID attempt, Map<String, Integer> marks) {
    PracticeTask task = attempts.taskAsJudged(attempt).orElseThrow(NotFoundException::new);
    Map<String, Integer> known = new HashMap<>(marks);
    known.keySet().retainAll(task.rubric().stream().map(RubricItem::id).toList());
    return known;
  }

  private static void seen(Person by, Optional<Attempt> found) {
    by.mustBe(Role.INSTRUCTOR);
    by.mustBeIn(found.orElseThrow(NotFoundException::new).workshop());
  }
}
