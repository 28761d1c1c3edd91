package lapline.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import lapline.grading.Grading.Decision;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.AttemptRecords;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.RubricItem;

/**
 * An instructor accepts a panel to the eye or returns it with one remark. The numbers are judged
 * for themselves; neither overrules the other.
 */
@ApplicationScoped
public class GradePanel {
  static final int LONGEST_REMARK = 2000;

  /** Key of the refusal that somebody has graded the panel since. */
  public static final String DECIDED_SINCE = "grading.refused.decided-since";

  private AttemptRecords attempts;
  private GradingRecords gradings;
  private Advances advances;
  private Clock clock;

  protected GradePanel() {}

  @Inject
  public GradePanel(
      AttemptRecords attempts, GradingRecords gradings, Advances advances, Clock clock) {
    this.attempts = attempts;
    this.gradings = gradings;
    this.advances = advances;
    this.clock = clock;
  }

  /**
   * What the instructor put down at the bench.
   *
   * @param marks mark by rubric item; those not given are left out
   */
  public record Bench(
      Decision decision, String remark, Map<String, Integer> marks, List<DefectMark> defects) {}

  /** Why a grading was not taken: message key, and the rubric item it is about (or empty). */
  public record Refusal(String item, String key, String label) {}

  /**
   * @param seen the latest grading that the page showed; null for none. One that was given since is
   *     refused to be passed over, so that nobody decides against a colleague without knowing.
   * @return what stands against it; empty when it was taken
   */
  @Transactional
  public List<Refusal> run(Person by, UUID attemptId, Bench bench, UUID seen) {
    Attempt attempt = held(by, attemptId);
    UUID latest = gradings.latest(attemptId).map(Grading::id).orElse(null);
    return Objects.equals(latest, seen)
        ? grade(by, attempt, bench)
        : List.of(new Refusal("", DECIDED_SINCE, ""));
  }

  /** As above, for somebody who has just looked. */
  @Transactional
  public List<Refusal> run(Person by, UUID attemptId, Bench bench) {
    return grade(by, held(by, attemptId), bench);
  }

  private Attempt held(Person by, UUID attemptId) {
    by.mustBe(Role.INSTRUCTOR);
    Attempt attempt = attempts.attemptToChange(attemptId).orElseThrow(NotFoundException::new);
    by.mustBeIn(attempt.workshop());
    return attempt;
  }

  private List<Refusal> grade(Person by, Attempt attempt, Bench bench) {
    UUID attemptId = attempt.id();
    PracticeTask task = attempts.taskAsJudged(attemptId).orElseThrow(NotFoundException::new);
    List<Refusal> refusals = refusals(by, attempt, task, bench);
    if (refusals.isEmpty()) {
      gradings.add(grading(by, attempt, bench));
      gradings.forgetUnfinished(attemptId, by.id());
      attempts.changeState(attemptId, state(bench.decision()));
      advances.tell(new LearnerAdvanced(attempt.person(), attempt.workshop(), attempt.unit()));
    }
    return refusals;
  }

  private static List<Refusal> refusals(
      Person by, Attempt attempt, PracticeTask task, Bench bench) {
    List<Refusal> all = new ArrayList<>();
    if (attempt.isDraft()) {
      all.add(new Refusal("", "grading.refused.draft", ""));
    }
    if (attempt.belongsTo(by.id())) {
      all.add(new Refusal("", "grading.refused.own", ""));
    }
    if (bench.remark().length() > LONGEST_REMARK) {
      all.add(new Refusal("", "grading.refused.remark-long", ""));
    }
    if (bench.decision() == Decision.RETURNED && bench.remark().isBlank()) {
      all.add(new Refusal("", "grading.refused.return-remark", ""));
    }
    if (bench.defects().stream().anyMatch(d -> !placeable(task, d))) {
      all.add(new Refusal("", "grading.refused.defect", ""));
    }
    task.rubric().forEach(item -> mark(item, bench).ifPresent(all::add));
    return all;
  }

  /** To accept a panel every item needs a mark, and the critical ones a good enough one. */
  private static Optional<Refusal> mark(RubricItem item, Bench bench) {
    Integer mark = bench.marks().get(item.id());
    if (mark != null && item.anchors().stream().noneMatch(a -> a.mark() == mark)) {
      return Optional.of(new Refusal(item.id(), "grading.refused.no-such-mark", item.label()));
    }
    if (bench.decision() == Decision.RETURNED) {
      return Optional.empty();
    }
    if (mark == null) {
      return Optional.of(new Refusal(item.id(), "grading.refused.mark-missing", item.label()));
    }
    return item.critical() && mark < item.acceptedFrom()
        ? Optional.of(new Refusal(item.id(), "grading.refused.critical-low", item.label()))
        : Optional.empty();
  }

  private static boolean placeable(PracticeTask task, DefectMark d) {
    boolean known = task.defects().stream().anyMatch(k -> k.id().equals(d.kind()));
    boolean onPanel =
        d.x() >= 0 && d.y() >= 0 && d.x() <= task.panel().width() && d.y() <= task.panel().height();
    return known && onPanel;
  }

  private Grading grading(Person by, Attempt attempt, Bench bench) {
    return new Grading(
        UUID.randomUUID(),
        attempt.id(),
        attempt.workshop(),
        by.id(),
        clock.instant(),
        bench.decision(),
        bench.remark().strip(),
        bench.marks(),
        bench.defects());
  }

  private static Attempt.State state(Decision decision) {
    return decision == Decision.ACCEPTED ? Attempt.State.ACCEPTED : Attempt.State.RETURNED;
  }
}
