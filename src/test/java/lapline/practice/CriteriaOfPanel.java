package lapline.practice;

import java.util.List;
import lapline.practice.PanelScore.Result;
import lapline.practice.quantity.MeasuredPanel;

/** The verdicts of all criteria of one panel and its practice score, without map and causes. */
public final class CriteriaOfPanel {
  public static final int READINGS = 96;

  private final PracticeTask task;
  private final PanelEntry entry;

  private CriteriaOfPanel(PracticeTask task, PanelEntry entry) {
    this.task = task;
    this.entry = entry;
  }

  /** A well-sprayed panel of two coats of clear with four passes each: 96 readings. */
  public static CriteriaOfPanel clear() {
    List<Reading> readings =
        ClearPanel.good().read().entry().readings().values().stream()
            .filter(r -> r.cell().pass() <= 4 && !r.cell().measurand().equals("tip-size"))
            .toList();
    if (readings.size() != READINGS) {
      throw new IllegalStateException(readings.size() + " readings");
    }
    return new CriteriaOfPanel(ClearPanel.TASK, PanelEntry.of(readings));
  }

  /** Without the one criterion that needs the film of the whole panel. */
  public CriteriaOfPanel withoutShare() {
    List<Criterion> others =
        task.criteria().stream().filter(c -> !c.quantity().equals("film-share")).toList();
    return new CriteriaOfPanel(task.withCriteria(others), entry);
  }

  /** Practice score; every reading is read anew. */
  public double score() {
    List<Result> results = PanelScorer.judge(new MeasuredPanel(task, entry));
    return PracticeScore.of(results);
  }
}
