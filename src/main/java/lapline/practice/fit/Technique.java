package lapline.practice.fit;

import java.util.List;
import java.util.stream.Stream;
import lapline.practice.Criterion;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.practice.Reading;

/**
 * How the panel was sprayed, as far as it was written down; the rest from the task's targets, and
 * last from common practice.
 *
 * @param fanWidth metres
 * @param gaps from each centreline to the next in the order sprayed, metres, over the coat with the
 *     most of them; empty where none was written down
 * @param plannedSpacing metres, where no gap was written down
 * @param bow mean of the distances at both ends over that in the middle, less 1; NaN if not
 *     measured
 * @param bowUncertainty of it
 */
record Technique(
    double fanWidth, List<Double> gaps, double plannedSpacing, double bow, double bowUncertainty) {
  // common practice, no source: a fan of 9 in and 70 % overlap
  private static final double USUAL_FAN = 0.23;
  private static final double USUAL_OVERLAP = 0.7;
  // how far a good hand's distances stray from a straight line, as a share; course assumption
  private static final double HAND = 0.03;

  static Technique of(PracticeTask task, PanelEntry entry) {
    double fan = mean(entry.of("fan-width"), target(task, "fan-width", USUAL_FAN));
    double overlap = target(task, "overlap", USUAL_OVERLAP);
    double[] bow = bow(entry);
    return new Technique(
        fan, gaps(entry), fan * Math.min(0.9, Math.max(0, 1 - overlap)), bow[0], bow[1]);
  }

  boolean spacingKnown() {
    return !gaps.isEmpty();
  }

  /** Mean step from pass to pass, metres. */
  double spacing() {
    return gaps.stream().mapToDouble(g -> g).average().orElse(plannedSpacing);
  }

  boolean bowKnown() {
    return !Double.isNaN(bow);
  }

  /** The step before pass 1 is one from the panel's edge, so it is no gap between passes. */
  private static List<Double> gaps(PanelEntry entry) {
    List<Reading> spacing =
        entry.of("pass-spacing").stream()
            .filter(r -> r.value() > 0 && r.cell().pass() != 1)
            .toList();
    return Stream.iterate(1, c -> c <= 20, c -> c + 1)
        .map(c -> spacing.stream().filter(r -> r.cell().coat() == c).map(Reading::value).toList())
        .reduce(List.of(), (most, next) -> next.size() > most.size() ? next : most);
  }

  private static double[] bow(PanelEntry entry) {
    List<Reading> start = entry.of("distance-start");
    List<Reading> middle = entry.of("distance-middle");
    List<Reading> end = entry.of("distance-end");
    double m = mean(middle, Double.NaN);
    double bow = (mean(start, Double.NaN) + mean(end, Double.NaN)) / 2 / m - 1;
    double reading = middle.stream().mapToDouble(Reading::standardUncertainty).average().orElse(0);
    double each = reading / m * Math.sqrt(1.5 / Math.max(1, middle.size()));
    return new double[] {m > 0 ? bow : Double.NaN, Math.hypot(HAND, each)};
  }

  private static double mean(List<Reading> readings, double otherwise) {
    return readings.stream().mapToDouble(Reading::value).average().orElse(otherwise);
  }

  private static double target(PracticeTask task, String quantity, double otherwise) {
    return task.criteria().stream()
        .filter(c -> c.quantity().equals(quantity))
        .map(Criterion::target)
        .filter(t -> t.hasLeast() && t.hasMost())
        .mapToDouble(t -> (t.least() + t.most()) / 2)
        .findFirst()
        .orElse(otherwise);
  }
}
