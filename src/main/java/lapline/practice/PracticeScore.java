package lapline.practice;

import java.util.List;
import lapline.practice.PanelScore.Result;
import lapline.trade.measure.Verdict;

/**
 * The practice score of one panel, 0 to 100: the weighted mean of the points of what was judged,
 * scaled by how sure the panel's critical criteria are met. It is scaled, not cut off, so that two
 * panels with the same fault still differ by the rest of their work and the score moves smoothly.
 * Both ceilings are choices of the course, with no source.
 */
final class PracticeScore {
  /**
   * Best score with a critical criterion missed: nobody shall read 80 or more, which is called
   * good, on work that has to be done again.
   */
  static final double MISSED = 79;

  /** Best score with a critical criterion in doubt or not judged: below what sure work gets. */
  static final double DOUBTFUL = 94;

  /** Less than this is arithmetic, not work. */
  private static final double HUNDREDTH = 0.01;

  private PracticeScore() {}

  /** In whole points, rounded down; 100 only where every criterion judged is met. */
  static double of(List<Result> results) {
    double score = Math.floor(smooth(results) + HUNDREDTH);
    boolean allMet = results.stream().allMatch(r -> !r.judged() || r.verdict() == Verdict.MET);
    return allMet ? score : Math.min(score, 99);
  }

  /** The same before it is rounded; 0 where nothing was judged. */
  static double smooth(List<Result> results) {
    double ceiling = results.stream().mapToDouble(PracticeScore::ceiling).min().orElse(100);
    return mean(results) * ceiling;
  }

  private static double mean(List<Result> results) {
    double weights = 0;
    double points = 0;
    for (Result r : results) {
      if (r.judged()) {
        weights += r.criterion().weight();
        points += r.criterion().weight() * r.points();
      }
    }
    return weights == 0 ? 0 : points / weights;
  }

  /**
   * A rule without weight, yes or no by its nature, has none: it would make the score jump, and
   * what it rests on is judged beside it.
   */
  private static double ceiling(Result r) {
    if (!r.criterion().critical() || r.criterion().weight() == 0 || !r.applies()) {
      return 100;
    }
    return r.judged() ? ceiling(r.conformance()) : DOUBTFUL;
  }

  /** Straight lines through the verdicts' own limits. */
  private static double ceiling(double conformance) {
    double sure = Verdict.SURE;
    double unsure = 1 - sure;
    if (conformance <= unsure) {
      return MISSED;
    }
    return conformance < sure
        ? MISSED + (DOUBTFUL - MISSED) * (conformance - unsure) / (sure - unsure)
        : DOUBTFUL + (100 - DOUBTFUL) * (conformance - sure) / (1 - sure);
  }
}
