package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Off;
import lapline.practice.PanelScore.Result;
import lapline.practice.PanelScore.Rival;
import lapline.practice.Phrase.End;
import lapline.practice.PracticeTask.FindingRule;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;

/**
 * Causes in the task's own words, where a criterion came out low or high. One in doubt gets none:
 * there it is said what would settle the doubt.
 */
final class TaskFindings {
  private static final Set<Dimension> NO_DISTANCE =
      Set.of(Dimension.CHOICE, Dimension.GRIT, Dimension.CLOCK);

  private TaskFindings() {}

  static List<Finding> of(PracticeTask task, List<Result> results) {
    List<Finding> found = new ArrayList<>();
    for (Result r : results) {
      if (r.judged() && r.verdict() == Verdict.MISSED) {
        rule(task, r).ifPresent(rule -> found.add(missed(task, rule, r)));
      }
      if (r.judged() && r.verdict() == Verdict.DOUBTFUL) {
        found.add(doubtful(task, r));
      }
    }
    return found;
  }

  private static Optional<FindingRule> rule(PracticeTask task, Result result) {
    String side = side(result);
    return task.findings().stream()
        .filter(f -> f.criterion().equals(result.criterion().id()))
        .filter(f -> f.side().equals("any") || f.side().equals(side))
        .filter(f -> f.beyond() == 0 || Math.abs(outsideBy(result)) > f.beyond())
        .findFirst();
  }

  private static double outsideBy(Result result) {
    return result.target().outsideBy(result.value());
  }

  /** The side of the range that the value lies nearer to, or beyond. */
  private static String side(Result result) {
    TargetRange target = result.target();
    if (!target.hasMost()) {
      return "low";
    }
    if (!target.hasLeast()) {
      return "high";
    }
    return result.value() < (target.least() + target.most()) / 2 ? "low" : "high";
  }

  private static Finding missed(PracticeTask task, FindingRule rule, Result r) {
    List<Rival> rivals = new ArrayList<>();
    double support = 1 - r.conformance();
    double share = rule.rivals().isEmpty() ? 0 : support / (2 * rule.rivals().size());
    for (int i = 0; i < rule.rivals().size(); i++) {
      String id = r.criterion().id() + "." + side(r) + "." + (i + 1);
      rivals.add(new Rival(id, share, Phrase.written(rule.rivals().get(i))));
    }
    return new Finding(
        r.criterion().id() + "." + side(r),
        support,
        Phrase.written(rule.cause()),
        List.of(evidence(task, r)),
        rivals,
        Phrase.written(rule.change()),
        null,
        List.of(),
        off(r));
  }

  /** How far outside its target; choices, rules, grits and times of day have no distance. */
  private static Off off(Result r) {
    Dimension dimension =
        r.criterion().dimension() == Dimension.TEMPERATURE
            ? Dimension.TEMPERATURE_DIFFERENCE
            : r.criterion().dimension();
    return NO_DISTANCE.contains(dimension)
            || PanelQuantities.RULES.contains(r.criterion().quantity())
        ? null
        : Off.of(Math.abs(outsideBy(r)), r.estimate(), dimension);
  }

  private static Finding doubtful(PracticeTask task, Result r) {
    return new Finding(
        r.criterion().id() + Finding.DOUBT,
        1 - r.conformance(),
        Phrase.message("score.doubt", Phrase.word(r.criterion().label())),
        List.of(evidence(task, r)),
        List.of(),
        r.advice(),
        null,
        List.of());
  }

  private static Phrase evidence(PracticeTask task, Result r) {
    return Whereabouts.evidence(task, r).orElseGet(() -> evidence(r));
  }

  private static Phrase evidence(Result r) {
    boolean low = side(r).equals("low");
    double limit = low ? r.target().least() : r.target().most();
    return Phrase.message(
        low ? "score.evidence.low" : "score.evidence.high",
        Phrase.word(r.criterion().label()),
        Phrase.quantity(r.estimate(), r.criterion().spoken()),
        Phrase.limit(limit, low ? End.LEAST : End.MOST, r.criterion().spoken()));
  }
}
