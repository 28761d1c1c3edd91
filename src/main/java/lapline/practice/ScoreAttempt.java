package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;
import lapline.people.NotFoundException;
import lapline.people.Person;

/**
 * Judges a panel by what is kept of it, and keeps the judgement with the task exactly as it was
 * applied. Sent twice, it judges once.
 */
@ApplicationScoped
public class ScoreAttempt {
  private AttemptRecords records;
  private ReadPanel read;
  private TargetsInForce targets;
  private Advances advances;
  private Clock clock;

  protected ScoreAttempt() {}

  @Inject
  public ScoreAttempt(
      AttemptRecords records,
      ReadPanel read,
      TargetsInForce targets,
      Advances advances,
      Clock clock) {
    this.records = records;
    this.read = read;
    this.targets = targets;
    this.advances = advances;
    this.clock = clock;
  }

  /** What came of the wish to have a panel scored. */
  public sealed interface Outcome permits Scored, NotYet {}

  public record Scored(Attempt attempt, PanelScore score) implements Outcome {}

  /** Nothing was judged: these fields have to be looked at first. */
  public record NotYet(List<FieldProblem> problems) implements Outcome {
    public NotYet {
      problems = List.copyOf(problems);
    }
  }

  /**
   * @param submitKey chosen by who sends it, the same when the same is sent again
   */
  @Transactional
  public Outcome run(Person by, UUID id, String submitKey) {
    Attempt attempt = records.attemptToChange(id).orElseThrow(NotFoundException::new);
    if (attempt.belongsTo(by.id()) && !attempt.isDraft()) {
      // the second tap of two, or the answer to the first was lost on the way
      return new Scored(attempt, records.score(id).orElseThrow());
    }
    attempt.mustBeWrittenBy(by);
    PracticeTask task = targets.apply(by, read.task(attempt), attempt.gunCard());
    PanelReading reading = read.run(attempt.units(), task, records.readings(id));
    List<FieldProblem> problems = read.problemsBeforeScoring(task, reading);
    return problems.isEmpty()
        ? judge(attempt, task, reading.entry(), submitKey)
        : new NotYet(problems);
  }

  private Scored judge(Attempt draft, PracticeTask task, PanelEntry entry, String submitKey) {
    PanelScore score = PanelScorer.score(task, entry);
    Attempt scored =
        draft.judged(
            task.version(),
            new Attempt.Outcome(clock.instant(), score.practiceScore(), score.accepted()));
    records.keepJudgement(scored, submitKey, task, score);
    advances.tell(new LearnerAdvanced(scored.person(), scored.workshop(), scored.unit()));
    return new Scored(scored, score);
  }
}
