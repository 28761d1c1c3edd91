package lapline.practice.fit;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.WrittenPasses;

/** What a learner wrote down about the strokes of a panel, as {@code trade.stroke} takes it. */
final class WrittenStrokes {
  private WrittenStrokes() {}

  static WrittenPasses of(PracticeTask task, PanelEntry entry, Technique technique) {
    return new WrittenPasses(
        task.panel().width(),
        task.panel().height(),
        technique.fanWidth(),
        technique.meantStep(),
        IntStream.rangeClosed(1, Math.max(1, task.coats()))
            .mapToObj(coat -> steps(task, entry, coat))
            .toList());
  }

  /**
   * By the number of the pass that the step leads to, from the upper edge to pass 1; a first pass
   * further off the edge than the panel is high is none.
   */
  private static Map<Integer, Estimate> steps(PracticeTask task, PanelEntry entry, int coat) {
    Map<Integer, Estimate> steps = new TreeMap<>();
    entry.of(Technique.SPACING).stream()
        .filter(r -> r.cell().coat() == coat && r.cell().pass() > 1 && r.value() > 0)
        .forEach(r -> steps.put(r.cell().pass(), Estimate.of(r.value(), r.standardUncertainty())));
    entry
        .at(Cell.coat(Technique.FIRST_PASS, coat))
        .filter(r -> Math.abs(r.value()) <= task.panel().height())
        .ifPresent(r -> steps.put(1, Estimate.of(r.value(), r.standardUncertainty())));
    return steps;
  }
}
