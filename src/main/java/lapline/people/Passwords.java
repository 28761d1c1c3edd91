package lapline.people;

/** Turns passwords into what may be kept of them, and checks them against it. */
public interface Passwords {
  /** Shortest password taken; length is what makes a password strong. */
  int LEAST_LENGTH = 10;

  String hash(char[] password);

  boolean matches(char[] password, String hash);
}
