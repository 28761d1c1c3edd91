package lapline.demo;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * How far each invented apprentice has come.
 *
 * @param number of the apprentice, from 1
 * @param panels how many panels they did, by unit in the course's order
 * @param ended how many days ago they did the last of them
 * @param signedUnits for how many units, from the first, an examiner decides when all is there
 * @param renewing how many panels they have done lately towards a renewal of the last of them
 */
record DemoPlan(int number, List<Integer> panels, int ended, int signedUnits, int renewing) {
  private static final int DAYS_PER_PANEL = 6;

  /** Who makes the same mistake panel after panel in the latest unit. */
  static final int STUCK = 4;

  private static final int SUSPENDED = 14;

  /** The fourteen; the last five were trained before, so that sign-offs end soon or have ended. */
  static final List<DemoPlan> ALL =
      List.of(
          new DemoPlan(1, List.of(2), 1, 0, 0),
          new DemoPlan(2, List.of(5, 1), 0, 0, 0),
          new DemoPlan(3, List.of(7, 3), 2, 1, 0),
          new DemoPlan(4, List.of(8, 7, 3), 1, 1, 0),
          new DemoPlan(5, List.of(7, 7, 4), 0, 2, 0),
          new DemoPlan(6, List.of(8, 7, 8, 1), 1, 2, 0),
          new DemoPlan(7, List.of(7, 7, 8, 3), 3, 3, 0),
          new DemoPlan(8, List.of(7, 7, 8, 6), 0, 3, 0),
          new DemoPlan(9, List.of(7, 7, 8, 11), 4, 3, 0),
          new DemoPlan(10, List.of(7, 7, 8, 11), 318, 4, 2),
          new DemoPlan(11, List.of(7, 7, 8, 11), 343, 4, 6),
          new DemoPlan(12, List.of(7, 7, 8, 11), 295, 4, 0),
          new DemoPlan(13, List.of(7, 7, 8, 11), 380, 4, 0),
          new DemoPlan(14, List.of(7, 7, 8, 11), 60, 4, 0));

  int allPanels() {
    return panels.stream().mapToInt(Integer::intValue).sum();
  }

  /** Time from one panel to the next; nobody took longer than half a year over all. */
  Duration between() {
    return Duration.ofHours(Math.min(24L * DAYS_PER_PANEL, 24L * 170 / Math.max(1, allPanels())));
  }

  /** Whether no panel in this unit turns out better than the one before. */
  boolean stuck(int unit) {
    return number == STUCK && unit == panels.size() - 1;
  }

  /** Whose sign-offs to spray do not count at the moment. */
  boolean suspended() {
    return number == SUSPENDED;
  }

  /** What the person does wrong in a unit; each has one weakness that follows them. */
  Fault fault() {
    return Fault.values()[number % Fault.values().length];
  }

  /** Forms of this person's panels in one unit, from first to last. */
  List<Form> forms(int unit, RandomGenerator chance) {
    double start = 0.55 + 0.4 * chance.nextDouble();
    List<Form> forms = new ArrayList<>();
    for (int i = 0; i < panels.get(unit); i++) {
      forms.add(stuck(unit) ? new Form(0.75, fault()) : Form.after(start, i, fault(), chance));
    }
    return forms;
  }
}
