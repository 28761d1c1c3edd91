package lapline.people;

/**
 * No such thing within the person's own workshop; another workshop's things look just like this.
 */
public final class NotFoundException extends RuntimeException {
  public NotFoundException() {
    super("not found");
  }
}
