package lapline.exams;

/** The person has a paper of this unit open already; it is offered instead of a second one. */
public final class OpenPaperException extends RuntimeException {
  public OpenPaperException() {
    super("a paper of this unit is open");
  }
}
