package lapline.demo;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import lapline.people.Person;
import lapline.practice.FieldProblem;
import lapline.practice.GunCard;
import lapline.practice.PracticeTask;

/** The invented guns and the invented data sheet of the demo workshop. */
final class DemoSetUp {
  private final DemoDesk desk;
  private final Person instructor;

  DemoSetUp(DemoDesk desk, Person instructor) {
    this.desk = desk;
    this.instructor = instructor;
  }

  /** Writes two cards where there is none; the one that is used for clear comes back. */
  UUID gunCard(Instant at) {
    desk.clock.set(at);
    if (desk.guns.inUse(instructor).isEmpty()) {
      addTwo();
    }
    return desk.guns.inUse(instructor).get(0).id();
  }

  private void addTwo() {
    add(
        "Practice gun A, low pressure, 1.3 mm",
        new GunCard.Ranges("3 to 5 in", "22 to 26 psi", "65 to 75 %", "12 to 20 in/s", ""));
    add(
        "Practice gun B, low pressure, 1.2 mm",
        new GunCard.Ranges("4 to 6 in", "18 to 22 psi", "", "", ""));
  }

  /** Narrows the film of clear by a data sheet; panels judged before keep the wider one. */
  void ownTarget(Instant at) {
    desk.clock.set(at);
    desk.tasks.ofUnit("clear").stream()
        .filter(t -> t.criterion("film").isPresent())
        .findFirst()
        .ifPresent(this::narrow);
  }

  private void narrow(PracticeTask task) {
    accepted(
        desk.sheets.run(
            instructor,
            task.id(),
            "film",
            "50 to 62 µm",
            "Example clear, sheet 3",
            "The new drum runs sooner than the old one."));
  }

  private void add(String name, GunCard.Ranges ranges) {
    accepted(desk.guns.add(instructor, name, ranges));
  }

  private static void accepted(List<FieldProblem> problems) {
    if (!problems.isEmpty()) {
      throw new IllegalStateException("invented set-up refused: " + problems);
    }
  }
}
