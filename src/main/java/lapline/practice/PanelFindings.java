package lapline.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Verdict;

/**
 * The likely causes of one panel: first that the film fits no pattern, then what the readings
 * cannot show, then the cause that cost most, other doubts last; from the spray's pattern and from
 * the task's own words. What hangs on a reading that fits nothing around it has no cause but that
 * reading, which comes first where no stroke is known to have put the film out.
 */
final class PanelFindings {
  /** A critical criterion keeps the panel from being accepted, so its causes count double. */
  private static final double CRITICAL = 2;

  /** Causes of too much or too little film, which weigh the mix against the hand. */
  private static final Set<String> AMOUNT = Set.of("too-much", "too-little", "wrong-mix");

  /** The cause that weighs the steps between passes against the film. */
  private static final String TOO_WIDE = "spacing-wide";

  private final PracticeTask task;
  private final List<Result> results;

  private PanelFindings(PracticeTask task, List<Result> results) {
    this.task = task;
    this.results = results;
  }

  /**
   * @param ofThePattern what the film speaks for
   */
  static List<Finding> of(PracticeTask task, List<Finding> ofThePattern, List<Result> results) {
    return new PanelFindings(task, results).inOrder(ofThePattern);
  }

  private List<Finding> inOrder(List<Finding> ofThePattern) {
    boolean strayLeads = strayLeads(ofThePattern);
    List<Finding> all = new ArrayList<>(inTheTasksWords(ofThePattern));
    all.addAll(ofThePattern);
    // the sort is stable: what only the pattern shows stays in the order of its own evidence
    all.sort(
        Comparator.comparing((Finding f) -> !f.fitsNoPattern())
            .thenComparing(f -> !f.blind())
            .thenComparing(f -> !(strayLeads && f.strays()))
            .thenComparing(Finding::doubtful)
            .thenComparing(f -> -lost(f)));
    return all;
  }

  private boolean strayLeads(List<Finding> ofThePattern) {
    return ofThePattern.stream().anyMatch(Finding::strays)
        && ofThePattern.stream().allMatch(Finding::doubtful)
        && results.stream().anyMatch(Result::hangsOnStrays);
  }

  private static boolean isFilm(Result r) {
    return isOf(r, PanelQuantities.FILM) || isOf(r, PanelQuantities.FILM_SHARE);
  }

  /**
   * Of too much or too little film one is told once, by the cause that has looked at the mix; of
   * steps too wide by the one that has looked at the film. Where film lies is told by the stroke
   * that put it there, and what hangs on a reading that strays by that reading.
   */
  private List<Finding> inTheTasksWords(List<Finding> ofThePattern) {
    boolean amountIsTold = ofThePattern.stream().anyMatch(f -> AMOUNT.contains(f.id()));
    boolean stepsAreTold = ofThePattern.stream().anyMatch(f -> f.id().equals(TOO_WIDE));
    boolean placesAreTold = ofThePattern.stream().anyMatch(PanelFindings::isOfTheStroke);
    List<Result> open =
        results.stream()
            .filter(r -> !(amountIsTold && isOf(r, PanelQuantities.FILM)))
            .filter(r -> !r.hangsOnStrays())
            .filter(r -> !(placesAreTold && isMissed(r, PanelQuantities.FILM_SHARE)))
            .filter(r -> !(stepsAreTold && isTooLittleOverlap(r)))
            .toList();
    return TaskFindings.of(task, open);
  }

  /** What a cause has cost: of its criterion, or of all that is judged on the film. */
  private double lost(Finding finding) {
    double overlap =
        finding.id().equals(TOO_WIDE)
            ? results.stream()
                .filter(PanelFindings::isTooLittleOverlap)
                .mapToDouble(PanelFindings::loss)
                .sum()
            : 0;
    return results.stream()
        .filter(finding::isAbout)
        .findFirst()
        .map(PanelFindings::loss)
        .orElseGet(() -> finding.support() * filmLoss() + overlap);
  }

  private static boolean isTooLittleOverlap(Result r) {
    return isMissed(r, PanelQuantities.OVERLAP)
        && r.target().hasLeast()
        && r.value() < r.target().least();
  }

  private double filmLoss() {
    return results.stream()
        .filter(PanelFindings::isFilm)
        .filter(Result::judged)
        .mapToDouble(PanelFindings::loss)
        .sum();
  }

  private static double loss(Result r) {
    return (1 - r.points()) * r.criterion().weight() * (r.criterion().critical() ? CRITICAL : 1);
  }

  private static boolean isOfTheStroke(Finding f) {
    return f.decided() && !AMOUNT.contains(f.id());
  }

  private static boolean isMissed(Result r, String quantity) {
    return isOf(r, quantity) && isMissed(r);
  }

  private static boolean isMissed(Result r) {
    return r.judged() && r.verdict() == Verdict.MISSED;
  }

  private static boolean isOf(Result result, String quantity) {
    return result.criterion().quantity().equals(quantity);
  }
}
