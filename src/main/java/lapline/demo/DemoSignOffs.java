package lapline.demo;

import java.util.List;
import lapline.people.Person;
import lapline.signoff.SignOff;
import lapline.signoff.Skill;
import lapline.signoff.Step;

/** Invented decisions of the examiner. */
final class DemoSignOffs {
  private final DemoDesk desk;
  private final Person examiner;

  DemoSignOffs(DemoDesk desk, Person examiner) {
    this.desk = desk;
    this.examiner = examiner;
  }

  /** Signs off whoever has shown all that the rules ask for; who has not is told what to do. */
  void decide(Person learner, String unit) {
    for (Skill skill : desk.skills.ofUnit(unit)) {
      boolean complete = desk.decide.evidence(examiner, learner.id(), skill.id()).isComplete();
      String reason =
          complete
              ? "Panels looked at together. Explained each step without help."
              : "Not yet. One or two more panels of the same quality in a row.";
      List<String> refusals = desk.decide.run(examiner, learner.id(), skill.id(), complete, reason);
      if (!refusals.isEmpty()) {
        throw new IllegalStateException("invented decision refused: " + refusals);
      }
    }
  }

  /** Whose mask does not fit for certain may not spray, whatever else they may do. */
  void suspendSpraying(Person learner) {
    for (Skill skill : desk.skills.all()) {
      if (desk.tasks.ofUnit(skill.unit()).stream().anyMatch(task -> task.coats() > 0)) {
        desk.signOffs.latest(learner.id(), skill.id()).ifPresent(this::suspend);
      }
    }
  }

  private void suspend(SignOff signOff) {
    desk.change.run(
        examiner,
        signOff.id(),
        Step.Kind.SUSPENDED,
        "Fit test of the breathing mask has run out. Lifted when it is renewed.");
  }
}
