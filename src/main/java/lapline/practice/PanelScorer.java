package lapline.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.practice.fit.FilmFieldEstimate;
import lapline.practice.fit.SprayFit;
import lapline.practice.quantity.Measured;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Verdict;

/**
 * Judges one panel by its numbers: a pure function of the task and what was written down. The
 * pages, the public API, the demo workshop and re-scoring all use this one call.
 */
public final class PanelScorer {
  /** Version of the rules below; kept with every score. */
  public static final String VERSION = "1";

  private PanelScorer() {}

  public static PanelScore score(PracticeTask task, PanelEntry entry) {
    List<Result> results =
        task.criteria().stream().map(c -> CriterionJudge.judge(c, task, entry)).toList();
    List<String> standing =
        results.stream()
            .filter(r -> r.criterion().critical() && !isMet(r))
            .map(r -> r.criterion().id())
            .toList();
    return new PanelScore(
        practiceScore(results),
        standing.isEmpty() && results.stream().anyMatch(Result::judged),
        standing,
        results,
        findings(task, entry, results),
        film(task, entry),
        VERSION);
  }

  private static boolean isMet(Result r) {
    return r.judged() && r.verdict() == Verdict.MET;
  }

  /** Weighted mean of the points of what was judged, 0 to 100; 0 when nothing was. */
  private static double practiceScore(List<Result> results) {
    double weights = 0;
    double points = 0;
    for (Result r : results) {
      if (r.judged()) {
        weights += r.criterion().weight();
        points += r.criterion().weight() * r.points();
      }
    }
    return weights == 0 ? 0 : 100 * points / weights;
  }

  /** What cost most comes first; what only the spray's pattern shows follows its own evidence. */
  private static List<Finding> findings(PracticeTask task, PanelEntry entry, List<Result> results) {
    List<Finding> all = new ArrayList<>(TaskFindings.of(task, results));
    all.addAll(SprayFit.explain(task, entry));
    all.sort(Comparator.comparingDouble((Finding f) -> -weight(f, task, results)));
    return all;
  }

  private static double weight(Finding finding, PracticeTask task, List<Result> results) {
    String criterion = finding.id().replaceAll("[./].*", "");
    return results.stream()
        .filter(r -> r.criterion().id().equals(criterion))
        .mapToDouble(
            r -> (1 - r.points()) * r.criterion().weight() * (r.criterion().critical() ? 2 : 1))
        .findFirst()
        .orElseGet(() -> finding.support() * filmLoss(results));
  }

  /** A cause of the film weighs what the film criteria lost. */
  private static double filmLoss(List<Result> results) {
    return results.stream()
        .filter(r -> r.criterion().quantity().startsWith("film-") && r.judged())
        .mapToDouble(r -> (1 - r.points()) * r.criterion().weight() * 2)
        .sum();
  }

  private static FilmField film(PracticeTask task, PanelEntry entry) {
    return task.criteria().stream()
        .filter(c -> c.quantity().equals("film-build"))
        .findFirst()
        .flatMap(
            c ->
                c.measure(task, entry) instanceof Measured.Values v && v.values().size() >= 3
                    ? Optional.of(field(task, c, v))
                    : Optional.<FilmField>empty())
        .orElse(null);
  }

  private static FilmField field(PracticeTask task, Criterion c, Measured.Values values) {
    Map<Integer, Estimate> byPlace = new TreeMap<>();
    values.values().forEach(v -> byPlace.put(v.where().place(), v.estimate()));
    return FilmFieldEstimate.of(task.panel(), byPlace, c.target());
  }
}
