package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import lapline.practice.PanelOutline.Place;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.NextPlace;

/**
 * That a scored panel's readings were opened again: what it had come to, to be told beside what it
 * comes to then, and where further readings were asked for.
 *
 * @param further places beside the task's own, with all that were asked for before
 * @param practiceScore it had, in whole points
 * @param finding id of what stood first; empty for nothing
 * @param cause the same in words; null for nothing
 */
public record Again(List<Place> further, double practiceScore, String finding, Phrase cause) {
  public Again {
    further = List.copyOf(further);
  }

  /**
   * @param task as the panel was judged under
   */
  static Again of(PracticeTask task, PanelScore score) {
    Finding first = score.findings().isEmpty() ? null : score.findings().get(0);
    return new Again(
        further(task.panel(), first == null ? List.of() : first.nextPlaces()),
        score.practiceScore(),
        first == null ? "" : first.id(),
        first == null ? null : first.cause());
  }

  /** A place that there is already is read again there. */
  private static List<Place> further(PanelOutline panel, List<NextPlace> advised) {
    List<Place> further = new ArrayList<>(panel.furtherPlaces());
    FurtherPlaces.of(panel, advised).stream()
        .filter(p -> panel.place(p.number()).isEmpty())
        .forEach(further::add);
    return further;
  }
}
