package lapline.practice.quantity;

import java.util.Map;
import java.util.Optional;
import lapline.practice.Criterion;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.practice.fit.BuildByPlace;
import lapline.practice.fit.FilmFieldEstimate;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/**
 * One panel with its task and all that was written down about it. Its film is estimated when first
 * asked for and then kept, since the share inside, the map and the verdicts all read the same one.
 * For one thread.
 */
public final class MeasuredPanel {
  /** Fewest places from which a film is drawn. */
  private static final int LEAST_PLACES = 3;

  private final PracticeTask task;
  private final PanelEntry entry;
  private Map<Integer, Estimate> build;
  private Optional<FilmFieldEstimate> film;

  public MeasuredPanel(PracticeTask task, PanelEntry entry) {
    this.task = task;
    this.entry = entry;
  }

  public PracticeTask task() {
    return task;
  }

  public PanelEntry entry() {
    return entry;
  }

  /** Dry film laid on at each place; see {@link BuildByPlace#dryByPlace}. */
  Map<Integer, Estimate> build() {
    if (build == null) {
      build = BuildByPlace.dryByPlace(entry);
    }
    return build;
  }

  /** What the task asks of that film. */
  Optional<TargetRange> buildTarget() {
    return task.criteria().stream()
        .filter(c -> c.quantity().equals(PanelQuantities.FILM))
        .map(Criterion::target)
        .findFirst();
  }

  /** The film over the panel; empty where no film is asked for, or too few places were read. */
  public Optional<FilmFieldEstimate> film() {
    if (film == null) {
      film =
          buildTarget()
              .filter(t -> build().size() >= LEAST_PLACES)
              .map(t -> FilmFieldEstimate.of(task.panel(), build(), t));
    }
    return film;
  }
}
