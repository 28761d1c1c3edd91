package lapline.people;

/** The person may not do this; the message key explains why and who can. */
public final class NotAllowedException extends RuntimeException {
  private final String key;

  public NotAllowedException(String key) {
    super(key);
    this.key = key;
  }

  public String key() {
    return key;
  }
}
