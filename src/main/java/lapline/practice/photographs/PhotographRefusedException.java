package lapline.practice.photographs;

/** A file that cannot be taken as a photograph of a panel; says why and what would be right. */
public final class PhotographRefusedException extends RuntimeException {

  /** Why a file is not taken. */
  public enum Reason {
    NO_IMAGE,
    TOO_MANY_BYTES,
    TOO_MUCH_TOGETHER,
    TOO_MANY_PIXELS,
    TOO_MANY,
    GRADED,
    BUSY
  }

  private final Reason reason;

  public PhotographRefusedException(Reason reason) {
    super(reason.name());
    this.reason = reason;
  }

  public Reason reason() {
    return reason;
  }
}
