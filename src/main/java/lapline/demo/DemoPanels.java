package lapline.demo;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.people.Person;
import lapline.practice.Attempt;
import lapline.practice.PracticeTask;
import lapline.practice.ScoreAttempt;
import lapline.practice.TypedReading;

/** Invented panels, started, written down and scored as an apprentice does it. */
final class DemoPanels {
  private static final Map<Fault, List<String>> NOTES =
      Map.of(
          Fault.WIDE_SPACING,
              List.of(
                  "Aim at the wet edge and count the passes.", "Closer passes, two fingers less."),
          Fault.ARCING,
              List.of("Walk with the gun, no wrist.", "Lock the elbow, step sideways at the end."),
          Fault.DRIFTING,
              List.of("Same distance at the right end as at the left.", "Feet further apart."),
          Fault.SHORT_FLASH,
              List.of("Set the timer before I hang up the gun.", "Wait the whole flash this time."),
          Fault.THIN_MIX,
              List.of(
                  "Pour the reducer last and read the cup at eye height.", "Read the cup twice."));
  private static final List<String> SURFACE_NOTES =
      List.of(
          "Slower along the edges.", "Lamp from both sides before I call it done.", "Other order.");

  private final DemoDesk desk;

  DemoPanels(DemoDesk desk) {
    this.desk = desk;
  }

  /** Does one panel from the task sheet to the score. */
  ScoreAttempt.Scored score(
      Person by, PracticeTask task, Form form, UUID gunCard, String submitKey, boolean first) {
    Attempt draft = desk.start.run(by, task.id(), gunCard, first ? "" : note(task, form));
    desk.clock.pass(Duration.ofMinutes(75));
    write(by, draft, readings(by, task, form));
    desk.clock.pass(Duration.ofMinutes(3));
    if (desk.score.run(by, draft.id(), submitKey) instanceof ScoreAttempt.Scored scored) {
      return scored;
    }
    throw new IllegalStateException("the invented panel of " + task.id() + " cannot be scored");
  }

  /** Leaves a panel half written down. */
  void leaveDraft(Person by, PracticeTask task, Form form) {
    Attempt draft = desk.start.run(by, task.id(), null, note(task, form));
    List<TypedReading> all = readings(by, task, form);
    write(by, draft, all.subList(0, all.size() / 2));
  }

  private void write(Person by, Attempt draft, List<TypedReading> readings) {
    desk.keep.run(by, draft.id(), 0, readings);
  }

  private List<TypedReading> readings(Person by, PracticeTask task, Form form) {
    var panel = new InventedPanel(new PanelDay(task, form, desk.chance));
    return panel.typed(desk.tasks.measurands(), by.units()).entrySet().stream()
        .map(e -> new TypedReading(e.getKey(), e.getValue(), 0))
        .toList();
  }

  private String note(PracticeTask task, Form form) {
    List<String> notes = task.coats() > 0 ? NOTES.get(form.fault()) : SURFACE_NOTES;
    return notes.get(desk.chance.nextInt(notes.size()));
  }
}
