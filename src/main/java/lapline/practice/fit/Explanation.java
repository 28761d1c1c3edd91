package lapline.practice.fit;

import java.util.List;
import lapline.practice.PanelScore.Finding;
import lapline.trade.stroke.StrokeFilm;

/**
 * What the film of a panel speaks for.
 *
 * @param stroke the film as these findings have it; null where there were too few places
 */
public record Explanation(List<Finding> findings, StrokeFilm stroke) {
  static Explanation of(List<Finding> findings) {
    return new Explanation(List.copyOf(findings), null);
  }
}
