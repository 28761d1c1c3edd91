package lapline.practice.fit;

import java.util.List;
import java.util.Set;
import lapline.practice.PanelScore.Finding;
import lapline.trade.stroke.StrokeFilm;

/**
 * What the film of a panel speaks for.
 *
 * @param strays the places whose reading fits nothing around it
 * @param stroke the film as these findings have it; null where there were too few places
 */
public record Explanation(List<Finding> findings, Set<Integer> strays, StrokeFilm stroke) {
  public Explanation {
    findings = List.copyOf(findings);
    strays = Set.copyOf(strays);
  }

  /** Nothing. */
  public static Explanation none() {
    return of(List.of());
  }

  static Explanation of(List<Finding> findings) {
    return new Explanation(findings, Set.of(), null);
  }
}
