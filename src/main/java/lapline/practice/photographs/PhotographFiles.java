package lapline.practice.photographs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The pictures themselves, in files named by what they hold: the same picture is kept once. */
public final class PhotographFiles {
  private static final String HASH = "[0-9a-f]{64}";
  private final Path folder;

  public PhotographFiles(Path folder) {
    this.folder = folder;
  }

  /** Keeps the picture and its thumbnail. */
  public String keep(CleanPicture picture) {
    String hash = hash(picture.full());
    write(path(hash, true), picture.small());
    // last, so that where it is the thumbnail is too
    write(path(hash, false), picture.full());
    return hash;
  }

  public byte[] read(String hash, boolean small) {
    try {
      return Files.readAllBytes(path(hash, small));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public void remove(String hash) {
    try {
      Files.deleteIfExists(path(hash, false));
      Files.deleteIfExists(path(hash, true));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path path(String hash, boolean small) {
    if (!hash.matches(HASH)) {
      throw new IllegalArgumentException("not a picture's name");
    }
    String name = hash.substring(4) + (small ? "-small" : "") + ".jpg";
    return folder.resolve(hash.substring(0, 2)).resolve(hash.substring(2, 4)).resolve(name);
  }

  /** Written aside and moved, so that a picture is there whole or not at all. */
  private static void write(Path path, byte[] bytes) {
    if (Files.exists(path)) {
      return;
    }
    try {
      Files.createDirectories(path.getParent());
      Path aside = Files.createTempFile(path.getParent(), "new", ".part");
      Files.write(aside, bytes);
      Files.move(aside, path, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
