package lapline.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.random.RandomGenerator;

/** Random codes that open something, and the digest under which they are kept. */
public final class Secrets {
  private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";

  private Secrets() {}

  /** A code of letters and figures that cannot be mistaken for each other; 5 bits a letter. */
  public static String code(RandomGenerator chance, int letters) {
    StringBuilder code = new StringBuilder(letters);
    for (int i = 0; i < letters; i++) {
      code.append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
    }
    return code.toString();
  }

  /** SHA-256 of a code in hexadecimal. */
  public static String digest(String code) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(code.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
