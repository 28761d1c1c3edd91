package lapline.demo;

import java.util.Map;
import java.util.OptionalDouble;
import lapline.practice.Cell;

/** What comes of preparing and of masking a panel. */
final class SurfaceHabits {
  private static final double[] IN_ORDER = {240, 400, 600};
  private static final double[] ONE_LEFT_OUT = {240, 600};

  private final PanelDay day;
  private final double[] papers;

  private SurfaceHabits(PanelDay day) {
    this.day = day;
    this.papers = day.mishap(0.5) ? ONE_LEFT_OUT : IN_ORDER;
  }

  static Map<String, Habit> preparing(PanelDay day) {
    SurfaceHabits habits = new SurfaceHabits(day);
    return Map.of(
        "shine-left", Habit.of(c -> day.fault(0.14)),
        "edge-missed", Habit.of(c -> day.fault(0.22)),
        "dust-left", Habit.of(c -> day.fault(0.2)),
        "water-break", Habit.of(c -> day.fault(0.4)),
        "grit", habits::paper,
        "work-time", Habit.of(c -> habits.minutes()));
  }

  static Map<String, Habit> masking(PanelDay day) {
    SurfaceHabits habits = new SurfaceHabits(day);
    return Map.of(
        "bleed-length", Habit.of(c -> habits.length(0.0005, 0.03)),
        "hard-edge-length", Habit.of(c -> habits.length(0.0005, 0.045)),
        "apertures-missed", Habit.of(c -> day.fault(0.5) + day.fault(0.25)),
        "slack-film", Habit.of(c -> day.fault(0.45)),
        "jamb-overhang", Habit.of(c -> day.near(day.aim("jamb-overhang", 0.025), 0.06, 0.4)),
        "tape-used", Habit.of(c -> day.near(6.5 + 4 * day.form().slip(), 0.05, 0.1)));
  }

  private OptionalDouble paper(Cell cell) {
    return cell.step() <= papers.length
        ? OptionalDouble.of(papers[cell.step() - 1])
        : OptionalDouble.empty();
  }

  /** To the whole minute, as one reads it off the shop's clock. */
  private double minutes() {
    double limit = day.aim("work-time", 45 * 60);
    return 60 * Math.rint(day.near(limit * (0.8 + 0.6 * day.form().slip()), 0.05, 0.1) / 60);
  }

  private double length(double steady, double beginner) {
    double spread = steady + beginner * day.form().slip();
    return spread * Math.abs(day.chance().nextGaussian());
  }
}
