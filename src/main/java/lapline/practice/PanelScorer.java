package lapline.practice;

import java.util.List;
import java.util.Optional;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.practice.fit.FilmFieldEstimate;
import lapline.practice.quantity.MeasuredPanel;
import lapline.trade.measure.Dimension;
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
    return new PanelScore(
        PracticeScore.of(results),
        isAccepted(task, results),
        standing,
        results,
        PanelFindings.of(task, findings(panel, results), results),
        film(panel),
        panel.explained().stroke(),
        VERSION);
  }

  /** What the film speaks for; of readings that stray also what the panel would be without them. */
  private static List<Finding> findings(MeasuredPanel panel, List<Result> results) {
    Optional<Phrase> without =
        panel
            .withoutStrays()
            .map(PanelScorer::judge)
            .flatMap(r -> better(panel.task(), r, results));
    return panel.explained().findings().stream()
        .map(f -> f.strays() ? without.map(f::with).orElse(f) : f)
        .toList();
  }

  private static Optional<Phrase> better(
      PracticeTask task, List<Result> without, List<Result> results) {
    boolean gained = PracticeScore.of(without) > PracticeScore.of(results);
    boolean counts = isAccepted(task, without) && !isAccepted(task, results);
    return gained || counts
        ? Optional.of(
            Phrase.message(
                counts ? "cause.stray.without.accepted" : "cause.stray.without",
                Phrase.quantity(PracticeScore.of(without), Dimension.NUMBER)))
        : Optional.empty();
  }

  private static boolean isAccepted(PracticeTask task, List<Result> results) {
    return results.stream().noneMatch(r -> stands(task, r))
        && results.stream().anyMatch(Result::judged);
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
