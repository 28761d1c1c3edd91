package lapline.demo;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import lapline.practice.Cell;

/** How the gun is set, the paint is mixed and the gun is led over a panel. */
final class GunHabits {
  /** One part of a mix, as poured for a practice panel, in cubic metres. */
  private static final double PART = 100e-6;

  private final PanelDay day;
  final double fan;
  final double spacing;
  final double distance;
  final double speed;
  final double solidsLeft;

  GunHabits(PanelDay day) {
    this.day = day;
    Form form = day.form();
    fan = day.near(day.aim("fan-width", 0.23), 0.03, 0.05);
    double wanted = 1 - day.aim("overlap", 0.7);
    spacing = day.near(fan * wanted * (1 + 0.7 * form.of(Fault.WIDE_SPACING)), 0.02, 0.08);
    distance = day.near(day.aim("distance-mean", 0.11), 0.02, 0.15);
    speed = day.near(day.aim("stroke-speed", 0.4), 0.02, 0.2);
    solidsLeft = 1 / (1 + 0.35 * form.of(Fault.THIN_MIX));
  }

  Map<String, Habit> setting() {
    Map<String, Habit> all = new HashMap<>();
    all.put("tip-size", Habit.of(c -> Math.rint(day.aim("tip-size", 0.0013) * 2e4) / 2e4));
    all.put("fluid-turns", Habit.of(c -> day.near(day.aim("fluid-turns", 2.5), 0.04, 0.2)));
    all.put("fan-turns", Habit.of(c -> 3));
    all.put("gun-pressure", Habit.of(c -> day.near(day.aim("gun-pressure", 165e3), 0.02, 0.12)));
    all.put("fan-width", Habit.of(c -> fan));
    all.put("mix-amount", Habit.of(this::poured));
    return all;
  }

  Map<String, Habit> strokes() {
    Map<String, Habit> all = new HashMap<>();
    all.put("pass-spacing", this::step);
    all.put("distance-start", Habit.of(c -> away(-1)));
    all.put("distance-middle", Habit.of(c -> away(0)));
    all.put("distance-end", Habit.of(c -> away(1)));
    all.put("stroke-length", Habit.of(c -> day.task().panel().width()));
    all.put("stroke-time", Habit.of(c -> day.task().panel().width() / day.near(speed, 0.03, 0.08)));
    return all;
  }

  /** Gun distance at the left end (−1), the middle (0) or the right end (1) of a stroke. */
  double distanceAt(int side) {
    Form form = day.form();
    double arc = side == 0 ? 0 : 0.35 * form.of(Fault.ARCING);
    return distance * (1 + arc + 0.4 * side * form.of(Fault.DRIFTING));
  }

  private double away(int side) {
    return Math.max(0.02, day.near(distanceAt(side), 0.02, 0.04));
  }

  /** The first pass follows no other. */
  private OptionalDouble step(Cell cell) {
    return cell.pass() == 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.min(day.near(spacing, 0.03, 0.06), 0.97 * fan));
  }

  /** A thin mix is one with more of its last part, the reducer. */
  private double poured(Cell cell) {
    var mix = day.task().mix();
    boolean known = cell.step() <= mix.size();
    double parts = known ? mix.get(cell.step() - 1).parts() : 1;
    boolean last = cell.step() == mix.size();
    double thinner = last ? 1 + 0.9 * day.form().of(Fault.THIN_MIX) : 1;
    return day.near(PART * parts * thinner, 0.005, 0.02);
  }
}
