package lapline.practice.fit;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lapline.practice.Criterion;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/**
 * How gun and hand were meant to go, and what was measured of it; the rest from the task's targets,
 * and last from common practice.
 *
 * @param fanWidth metres
 * @param fanMeasured whether it was measured on this day
 * @param overlap target of the task, as shares
 * @param bow mean of the distances at both ends over that in the middle, less 1; empty if they were
 *     not measured
 * @param distance target of the gun distance, metres; empty where the task has none
 */
record Technique(
    Estimate fanWidth,
    boolean fanMeasured,
    TargetRange overlap,
    Optional<Estimate> bow,
    Optional<Double> distance) {
  static final String SPACING = "pass-spacing";
  static final String FIRST_PASS = "first-pass";

  // common practice, no source: a fan of 9 in; 70 % overlap, and half at the least
  private static final double USUAL_FAN = 0.23;
  private static final TargetRange USUAL_OVERLAP = new TargetRange(0.5, 0.9);

  /** Where the rim of a test pattern is, is a matter of opinion; share of it, course assumption. */
  private static final double RIM = 0.04;

  /** A fan that nobody measured; share of it, course assumption. */
  private static final double UNMEASURED = 0.12;

  // how far a good hand's distances stray from a straight line, as a share; course assumption
  private static final double HAND = 0.03;

  private static final double MOST_OVERLAP = 0.9;

  static Technique of(PracticeTask task, PanelEntry entry) {
    List<Reading> fans = entry.of("fan-width").stream().filter(r -> r.value() > 0).toList();
    return new Technique(
        fans.isEmpty() ? meantFan(task) : measured(fans),
        !fans.isEmpty(),
        target(task, "overlap").orElse(USUAL_OVERLAP),
        bow(entry),
        target(task, "distance-mean").map(Technique::middle));
  }

  private static Estimate meantFan(PracticeTask task) {
    double fan = target(task, "fan-width").map(Technique::middle).orElse(USUAL_FAN);
    return Estimate.of(fan, UNMEASURED * fan);
  }

  private static Estimate measured(List<Reading> fans) {
    double fan = mean(fans, USUAL_FAN);
    double read = mean(fans.stream().mapToDouble(Reading::standardUncertainty));
    return Estimate.of(fan, Math.hypot(RIM * fan, read));
  }

  /** The overlap to aim for. */
  double meantOverlap() {
    return Math.min(MOST_OVERLAP, Math.max(0, middle(overlap)));
  }

  /** The step between passes that the task asks for with this fan, metres. */
  double meantStep() {
    return fanWidth.value() * (1 - meantOverlap());
  }

  /** Overlap below this is too little. */
  double leastOverlap() {
    return Math.min(MOST_OVERLAP, Math.max(0, overlap.least()));
  }

  private static double middle(TargetRange range) {
    return (range.least() + range.most()) / 2;
  }

  private static Optional<Estimate> bow(PanelEntry entry) {
    List<Reading> middles = entry.of("distance-middle");
    double middle = mean(middles, Double.NaN);
    double start = mean(entry.of("distance-start"), Double.NaN);
    double end = mean(entry.of("distance-end"), Double.NaN);
    double bow = (start + end) / 2 / middle - 1;
    if (!(middle > 0) || Double.isNaN(bow)) {
      return Optional.empty();
    }
    double reading = mean(middles.stream().mapToDouble(Reading::standardUncertainty));
    double each = reading / middle * Math.sqrt(1.5 / middles.size());
    return Optional.of(Estimate.of(bow, Math.hypot(HAND, each)));
  }

  private static double mean(List<Reading> readings, double otherwise) {
    return readings.stream().mapToDouble(Reading::value).average().orElse(otherwise);
  }

  private static double mean(DoubleStream values) {
    return values.average().orElse(0);
  }

  private static Optional<TargetRange> target(PracticeTask task, String quantity) {
    return task.criteria().stream()
        .filter(c -> c.quantity().equals(quantity))
        .map(Criterion::target)
        .filter(t -> t.hasLeast() && t.hasMost())
        .findFirst();
  }
}
