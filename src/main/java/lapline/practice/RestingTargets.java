package lapline.practice;

import java.util.List;
import java.util.Set;
import lapline.practice.quantity.PanelQuantities;

/**
 * Which other targets of a task rest on one that a workshop changes: some are judged by it and
 * follow by themselves, some were worked out from the course's own and stay what they are.
 *
 * @param following criteria that are judged by the changed target
 * @param staying criteria that were once worked out from it, and have to be looked at
 */
public record RestingTargets(List<Criterion> following, List<Criterion> staying) {
  private static final Set<String> JUDGED_BY_FILM =
      Set.of(PanelQuantities.FILM_SHARE, "film-plan", "film-spots");
  private static final Set<String> WORKED_OUT_FROM_FILM = Set.of("wet-film-mean");

  public static RestingTargets on(Criterion changed, PracticeTask task) {
    return changed.quantity().equals(PanelQuantities.FILM)
        ? new RestingTargets(those(task, JUDGED_BY_FILM), those(task, WORKED_OUT_FROM_FILM))
        : new RestingTargets(List.of(), List.of());
  }

  private static List<Criterion> those(PracticeTask task, Set<String> quantities) {
    return task.criteria().stream().filter(c -> quantities.contains(c.quantity())).toList();
  }
}
