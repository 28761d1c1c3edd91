package lapline.practice;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotAllowedException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.trade.measure.UnitSystem;

/**
 * One panel done by one apprentice under one task, without its readings and without the judgement;
 * those are asked for when a page needs them.
 *
 * @param task id of the practice task
 * @param taskVersion version of the task file, fixed anew when the panel is scored
 * @param sheetCode the short code on the printed task sheet
 * @param changedWhat the one thing the apprentice changes this time, in their own words
 * @param gunCard the gun card it is scored against; null for none
 * @param units in which a figure without a unit is meant, fixed when the panel is begun: what was
 *     written down keeps its meaning when the person changes their own units later
 * @param revision counts the changes to its readings
 * @param outcome null until it is scored
 * @param again what it had come to when its readings were last opened again; null for never
 */
public record Attempt(
    UUID id,
    UUID workshop,
    UUID person,
    String task,
    String taskVersion,
    String unit,
    String skill,
    String sheetCode,
    String changedWhat,
    UUID gunCard,
    UnitSystem units,
    State state,
    long revision,
    Instant started,
    Outcome outcome,
    Again again) {

  /** A panel that was never opened again. */
  public Attempt(
      UUID id,
      UUID workshop,
      UUID person,
      String task,
      String taskVersion,
      String unit,
      String skill,
      String sheetCode,
      String changedWhat,
      UUID gunCard,
      UnitSystem units,
      State state,
      long revision,
      Instant started,
      Outcome outcome) {
    this(
        id,
        workshop,
        person,
        task,
        taskVersion,
        unit,
        skill,
        sheetCode,
        changedWhat,
        gunCard,
        units,
        state,
        revision,
        started,
        outcome,
        null);
  }

  /** How far a panel has come. */
  public enum State {
    /** Readings are still being written down. */
    DRAFT,
    /** Judged by its numbers; waits for the instructor's eye. */
    SCORED,
    /** The instructor wants another one. */
    RETURNED,
    /** The instructor's eye agrees. */
    ACCEPTED
  }

  /** What came out, in short. */
  public record Outcome(Instant scored, double practiceScore, boolean accepted) {}

  public boolean isDraft() {
    return state == State.DRAFT;
  }

  public boolean belongsTo(UUID somebody) {
    return person.equals(somebody);
  }

  public Optional<Instant> scored() {
    return Optional.ofNullable(outcome).map(Outcome::scored);
  }

  /** Lets pass who may see it: the apprentice who did it, and who teaches, examines or runs. */
  public void mustBeSeenBy(Person who) {
    who.mustBeIn(workshop);
    if (!belongsTo(who.id())) {
      who.mustBe(Role.INSTRUCTOR, Role.EXAMINER, Role.OWNER, Role.REGISTRAR);
    }
  }

  /** Lets pass who may still write readings: the apprentice who does it, while it is a draft. */
  public void mustBeWrittenBy(Person who) {
    mustBeSeenBy(who);
    if (!belongsTo(who.id())) {
      throw new NotAllowedException("entry.not-yours");
    }
    if (!isDraft()) {
      throw new NotAllowedException("entry.not-draft");
    }
  }

  public Attempt withChoices(UUID otherGunCard, String otherChangedWhat) {
    return new Attempt(
        id,
        workshop,
        person,
        task,
        taskVersion,
        unit,
        skill,
        sheetCode,
        otherChangedWhat,
        otherGunCard,
        units,
        state,
        revision,
        started,
        outcome,
        again);
  }

  /** The same panel judged under this version of its task. */
  public Attempt judged(String version, Outcome now) {
    return new Attempt(
        id,
        workshop,
        person,
        task,
        version,
        unit,
        skill,
        sheetCode,
        changedWhat,
        gunCard,
        units,
        State.SCORED,
        revision,
        started,
        now,
        again);
  }
}
