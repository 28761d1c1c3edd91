package lapline.exams;

import java.time.Instant;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;

/**
 * One person's go at an exam, without its paper and its answers; those are asked for when a page
 * needs them.
 *
 * @param outcome null until it is handed in
 */
public record Sitting(
    UUID id, UUID workshop, UUID person, String unit, Instant drawn, Outcome outcome) {

  /** What came out, in short. */
  public record Outcome(Instant handedIn, double score, boolean passed) {}

  public boolean isOpen() {
    return outcome == null;
  }

  /** Only the person it was drawn for writes on a paper. */
  void mustBeWrittenBy(Person by) {
    by.mustBeIn(workshop);
    if (!person.equals(by.id())) {
      throw new NotFoundException();
    }
  }

  /** A paper is seen by its person and by those who teach and judge. */
  void mustBeSeenBy(Person by) {
    by.mustBeIn(workshop);
    if (!person.equals(by.id())) {
      by.mustBe(Role.INSTRUCTOR, Role.EXAMINER);
    }
  }

  Sitting handedIn(Instant at, PaperResult result) {
    return new Sitting(
        id, workshop, person, unit, drawn, new Outcome(at, result.score(), result.passed()));
  }
}
