package lapline.practice;

/** The person has a draft of this task open already; it is offered instead of a second one. */
public final class OpenDraftException extends RuntimeException {
  public OpenDraftException() {
    super("a draft of this task is open");
  }
}
