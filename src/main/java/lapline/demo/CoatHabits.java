package lapline.demo;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import lapline.practice.Cell;

/**
 * When coats are laid, how far each reaches, and how well they hide, counted by eye: the workshop
 * has no meter.
 */
final class CoatHabits {
  private static final double SQUARES = 20;

  private final PanelDay day;
  private final int coats;
  private final double flash;
  private final double hidesAt;
  private final double step;

  CoatHabits(PanelDay day) {
    this.day = day;
    // where coats step out, three fill the room there is; the record has one row to spare
    this.coats = day.task().field("step-out").isPresent() ? 3 : day.task().coats();
    double wanted = day.aim("flash-time", 480);
    double hurry = 1 - 0.75 * day.form().of(Fault.SHORT_FLASH);
    this.flash = 60 * Math.rint(day.near(wanted * hurry, 0.04, 0.12) / 60);
    this.step = 0.0635 + 0.045 * day.form().slip() * (1 + 0.6 * day.chance().nextGaussian());
    this.hidesAt = 3 + 2.5 * day.form().slip() + 0.1 * day.chance().nextGaussian();
  }

  int coats() {
    return coats;
  }

  Map<String, Habit> all() {
    Map<String, Habit> all = new HashMap<>();
    all.put("coat-start", Habit.of(c -> 9 * 3600 + 600 + (c.coat() - 1) * (flash + 300)));
    all.put("flash", this::flash);
    all.put("step-out", Habit.of(this::stepOut));
    all.put("room-left", Habit.of(c -> Math.max(0, room() - stepOut(c))));
    all.put(
        "squares-seen", Habit.of(c -> Math.rint(SQUARES * Math.max(0, 1 - c.coat() / hidesAt))));
    return all;
  }

  /** What was waited before a coat; nothing lies below the first. */
  private OptionalDouble flash(Cell cell) {
    return cell.coat() > 1 ? OptionalDouble.of(flash) : OptionalDouble.empty();
  }

  /** First the spot, then further each time; beginners jump far and come near the panel's edge. */
  private double stepOut(Cell cell) {
    double[] reach = {0.008, 0.008 + step * 0.55, 0.008 + step * 1.55};
    double out = reach[Math.min(cell.coat(), reach.length) - 1];
    return Math.min(out, room());
  }

  /** From the spot to the nearer edge: a spot of 100 mm in the middle, as the tasks have it. */
  private double room() {
    var panel = day.task().panel();
    return Math.max(0.01, Math.min(panel.width(), panel.height()) / 2 - 0.05);
  }
}
