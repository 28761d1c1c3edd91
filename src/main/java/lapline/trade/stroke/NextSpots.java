package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where three more readings would tell two faults apart: the spots at which their films differ most
 * in terms of what a reading there scatters, and not side by side.
 */
final class NextSpots {
  private static final int COUNT = 3;

  /** What a hand leaves to chance at any place, as a share of the film; course assumption. */
  private static final double HAND = 0.03;

  /** Apart by this share of the panel's diagonal. */
  private static final double APART = 1 / 6.0;

  /** Mirrored places tell the same but for the last digits; of them the first one is chosen. */
  private static final double ROUNDED = 1e-6;

  private NextSpots() {}

  private record Told(NextSpot next, double by) {}

  /**
   * @param one if so
   * @param other if not
   * @param uncertainty of one reading, metres
   */
  static List<NextSpot> between(StrokeFit one, StrokeFit other, double uncertainty) {
    PassPlan plan = one.model().plan();
    StrokeModel.At first = one.model().at(one.parameters());
    StrokeModel.At second = other.model().at(other.parameters());
    List<Told> told =
        PanelSpots.of(plan).stream()
            .map(s -> new NextSpot(s, first.film(s.x(), s.y()), second.film(s.x(), s.y())))
            .map(s -> new Told(s, apart(s.ifSo(), s.ifNot(), uncertainty)))
            .sorted(Comparator.comparingDouble((Told t) -> -Math.rint(t.by / ROUNDED)))
            .toList();
    return spread(told, APART * Math.hypot(plan.width(), plan.height()));
  }

  private static double apart(double film, double otherFilm, double uncertainty) {
    return Math.abs(film - otherFilm) / Math.hypot(uncertainty, HAND * film);
  }

  private static List<NextSpot> spread(List<Told> bestFirst, double least) {
    List<NextSpot> chosen = new ArrayList<>();
    for (Told t : bestFirst) {
      boolean apart = chosen.stream().allMatch(c -> c.spot().from(t.next.spot()) >= least);
      if (chosen.size() < COUNT && apart) {
        chosen.add(t.next);
      }
    }
    return List.copyOf(chosen);
  }
}
