package lapline.content;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The text of one hand-written file.
 *
 * @param path from the content root, with forward slashes, such as {@code
 *     curriculum/10-preparing/lesson.md}
 * @param text with line feeds only and no byte order mark
 */
public record ContentFile(String path, String text) {
  private static final int VERSION_BYTES = 6;

  /** The file's id: see {@link ContentId}. */
  public String id() {
    return ContentId.of(path);
  }

  /** A short hash of the text, which changes when, and only when, the text does. */
  public String version() {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, VERSION_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
