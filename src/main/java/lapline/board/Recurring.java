package lapline.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lapline.judgement.progress.SizeTrend;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/**
 * A cause that keeps coming back on one person's panels of a task. That it comes back is told by
 * how often it was found; whether it shrinks by its size on those panels on which it was, since a
 * panel on which it was not found has no size, and not the size 0.
 *
 * @param panels the task's latest panels, first one first
 * @param looked among how many of the latest it is counted
 * @param times on how many of those it was found, 2 or more
 * @param dimension of the sizes; null where none was measured
 */
public record Recurring(
    String task, String finding, List<Panel> panels, int looked, int times, Dimension dimension) {

  /**
   * One panel.
   *
   * @param size null where the cause was not found, or had no size
   */
  public record Panel(Instant scored, boolean found, Estimate size) {}

  public Recurring {
    panels = List.copyOf(panels);
  }

  /** Whether it was found on the last panel. */
  public boolean isOnLast() {
    return panels.get(panels.size() - 1).found();
  }

  /** Panels of which the size is known, first one first. */
  public List<Panel> measured() {
    return panels.stream().filter(p -> p.size() != null).toList();
  }

  /** How its size goes from panel to panel; empty where too few were measured. */
  public Optional<SizeTrend> trend() {
    double[] at = new double[measured().size()];
    double[] sizes = new double[at.length];
    int next = 0;
    for (int i = 0; i < panels.size(); i++) {
      Estimate size = panels.get(i).size();
      if (size != null) {
        at[next] = i + 1;
        sizes[next++] = size.value();
      }
    }
    return SizeTrend.of(at, sizes);
  }
}
