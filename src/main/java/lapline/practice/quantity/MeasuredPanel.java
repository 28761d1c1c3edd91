package lapline.practice.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lapline.practice.Criterion;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.fit.BuildByPlace;
import lapline.practice.fit.Explanation;
import lapline.practice.fit.FilmFieldEstimate;
import lapline.practice.fit.SprayFit;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/**
 * One panel with its task and all that was written down about it. Its film is estimated when first
 * asked for and then kept, since the share inside, the map and the verdicts all read the same one;
 * so is what explains it. For one thread.
 */
public final class MeasuredPanel {
  /** Fewest places from which a film is drawn. */
  private static final int LEAST_PLACES = 3;

  private final PracticeTask task;
  private final PanelEntry entry;
  private Map<Integer, Estimate> build;
  private Map<Integer, Estimate> everywhere;
  private Explanation explained;
  private Optional<MeasuredPanel> withoutStrays;
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

  /**
   * Dry film laid on at each place that the task asks for; see {@link BuildByPlace#dryByPlace}.
   * Where further readings are taken where they tell most, they are no fair sample, so means and
   * counts go without them.
   */
  Map<Integer, Estimate> build() {
    if (build == null) {
      build = new TreeMap<>(everywhere());
      build.keySet().removeIf(PanelOutline::isFurther);
    }
    return build;
  }

  /** The same with the further places, for what is drawn through them all. */
  Map<Integer, Estimate> everywhere() {
    if (everywhere == null) {
      everywhere = BuildByPlace.dryByPlace(entry);
    }
    return everywhere;
  }

  /** What the film of all readings speaks for. */
  public Explanation explained() {
    if (explained == null) {
      explained = SprayFit.explain(task, entry);
    }
    return explained;
  }

  /** Places whose dry film fits nothing around it. */
  public Set<Integer> strays() {
    // without any dry film the wet one is explained
    return everywhere().isEmpty() ? Set.of() : explained().strays();
  }

  /** The same panel as if the places that stray had no film; empty where none strays. */
  public Optional<MeasuredPanel> withoutStrays() {
    if (withoutStrays == null) {
      withoutStrays = strays().isEmpty() ? Optional.empty() : Optional.of(others());
    }
    return withoutStrays;
  }

  private MeasuredPanel others() {
    MeasuredPanel others = new MeasuredPanel(task, entry);
    others.everywhere = new TreeMap<>(everywhere());
    others.everywhere.keySet().removeAll(strays());
    others.explained = Explanation.none();
    return others;
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
              .filter(t -> everywhere().size() >= LEAST_PLACES)
              .map(t -> FilmFieldEstimate.of(task.panel(), everywhere(), strays(), t));
    }
    return film;
  }
}
