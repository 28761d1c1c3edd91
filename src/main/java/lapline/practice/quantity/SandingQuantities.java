package lapline.practice.quantity;

import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Input;
import lapline.practice.PanelScore.Working;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.finish.Abrasive;
import lapline.trade.finish.SandingSequence;
import lapline.trade.finish.SandingSequence.Step;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/** Whether the sanding grades lead down to the right scratch without a jump. */
final class SandingQuantities {
  private static final String GRIT = "grit";

  private SandingQuantities() {}

  /** The last grade used. */
  static Optional<Measured> finalGrit(MeasuredPanel panel) {
    return sequence(panel.entry())
        .flatMap(s -> value("formula.final-grit", s.last().grade(), List.of()));
  }

  /** The most numbers of the P scale that one step skips; 0 where one grade was used. */
  static Optional<Measured> largestStep(MeasuredPanel panel) {
    return sequence(panel.entry()).flatMap(SandingQuantities::largestStep);
  }

  private static Optional<Measured> largestStep(SandingSequence papers) {
    Optional<Step> largest = papers.largestStep();
    List<Input> between =
        largest.map(s -> List.of(paper(s.from()), paper(s.to()))).orElse(List.of());
    return value("formula.grit-step", largest.map(Step::numbers).orElse(0), between);
  }

  private static Input paper(Abrasive paper) {
    return Input.of(GRIT, Estimate.of(paper.grade(), 0), Dimension.GRIT);
  }

  private static Optional<Measured> value(String formula, double value, List<Input> papers) {
    return Measured.of(
        List.of(Value.of(Cell.panel(GRIT), Estimate.of(value, 0))),
        new Working(formula, "source.plain", papers));
  }

  /** Empty where no grade was written down, or one that the scale does not have. */
  private static Optional<SandingSequence> sequence(PanelEntry entry) {
    List<Double> grades = entry.of(GRIT).stream().map(r -> r.value()).toList();
    boolean known = grades.stream().allMatch(g -> Abrasive.ofGrade(g).isPresent());
    return grades.isEmpty() || !known
        ? Optional.empty()
        : Optional.of(SandingSequence.ofGrades(grades));
  }
}
