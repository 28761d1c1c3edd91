package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentReading;
import lapline.trade.measure.UnitSystem;

/** Judges readings against a task without keeping anything; for programs that ask 'what if'. */
@ApplicationScoped
public class ScoreReadings {
  private PracticeTasks tasks;
  private ReadPanel read;

  protected ScoreReadings() {}

  @Inject
  public ScoreReadings(PracticeTasks tasks, ReadPanel read) {
    this.tasks = tasks;
    this.read = read;
  }

  /** A score, or what has to be looked at first. */
  public record Answer(PanelScore score, List<FieldProblem> problems) {}

  public Optional<PracticeTask> task(String id) {
    return tasks.find(id);
  }

  /** A task given inline, in the shape of a task file. */
  public ContentReading<PracticeTask> inline(String yamlOrJson) {
    return new PracticeTaskReader(tasks.measurands()).read(new ContentFile("task", yamlOrJson));
  }

  /**
   * @param typed reading by cell key, written as a person would type it
   */
  public Answer run(PracticeTask task, Map<String, String> typed, UnitSystem units) {
    PanelReading reading = PanelReader.read(task, tasks.measurands(), typed, units);
    List<FieldProblem> problems = new ArrayList<>(read.problemsBeforeScoring(task, reading));
    return problems.isEmpty()
        ? new Answer(PanelScorer.score(task, reading.entry()), List.of())
        : new Answer(null, problems);
  }
}
