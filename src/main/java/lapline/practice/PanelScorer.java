package lapline.practice;

import java.util.List;
import lapline.practice.PanelScore.Result;
import lapline.practice.fit.Explanation;
import lapline.practice.fit.FilmFieldEstimate;
import lapline.practice.quantity.MeasuredPanel;
import lapline.trade.measure.Verdict;

/**
 * Judges one panel by its numbers: a pure function of the task and what was written down. The
 * pages, the public API, the demo workshop and re-scoring all use this one call.
 */
public final class PanelScorer {
  /** Version of the rules below; kept with every score. */
  public static final String VERSION = "5";

  private PanelScorer() {}

  public static PanelScore score(PracticeTask task, PanelEntry entry) {
    MeasuredPanel panel = new MeasuredPanel(task, entry);
    List<Result> results = judge(panel);
    List<String> standing =
        results.stream().filter(r -> stands(task, r)).map(r -> r.criterion().id()).toList();
    Explanation explained = panel.explained();
    return new PanelScore(
        PracticeScore.of(results),
        standing.isEmpty() && results.stream().anyMatch(Result::judged),
        standing,
        results,
        PanelFindings.of(task, explained.findings(), results),
        film(panel),
        explained.stroke(),
        VERSION);
  }

  /** The verdicts alone, without film and findings. */
  static List<Result> judge(MeasuredPanel panel) {
    RecordGaps gaps = new RecordGaps(panel.task(), panel.entry());
    return panel.task().criteria().stream().map(c -> CriterionJudge.judge(c, panel, gaps)).toList();
  }

  /** Critical and not sure to be met, or without a reading that the task requires. */
  private static boolean stands(PracticeTask task, Result r) {
    boolean critical = r.criterion().critical() && !isMet(r) && r.applies();
    return critical
        || r.missing().stream()
            .map(cell -> task.field(Cell.of(cell).measurand()))
            .anyMatch(field -> field.map(PracticeTask.Field::required).orElse(false));
  }

  private static boolean isMet(Result r) {
    return r.judged() && r.verdict() == Verdict.MET;
  }

  /** A blend has no one film over its panel: it is meant to run out. */
  private static boolean isBlend(PracticeTask task) {
    return task.criteria().stream().anyMatch(c -> c.quantity().equals("blend-room"));
  }

  private static FilmField film(MeasuredPanel panel) {
    return isBlend(panel.task()) ? null : panel.film().map(FilmFieldEstimate::field).orElse(null);
  }
}
