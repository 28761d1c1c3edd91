package lapline.practice.photographs;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import lapline.server.Settings;

/**
 * The pictures themselves, in files named by what they hold: the same picture is kept once. A file
 * bears the time at which a panel last took it up or let it go.
 */
@ApplicationScoped
public class PhotographFiles {
  private static final String HASH = "[0-9a-f]{64}";
  private static final String SMALL = "-small";
  private static final String JPEG = ".jpg";

  private Path folder;
  private Clock clock;

  protected PhotographFiles() {}

  @Inject
  public PhotographFiles(Settings settings, Clock clock) {
    this.folder = settings.dataFolder().resolve("photographs");
    this.clock = clock;
  }

  /** Keeps the picture and its thumbnail; one that is there already is marked as taken up. */
  public synchronized String keep(CleanPicture picture) {
    String hash = hash(picture.full());
    write(path(hash, true), picture.small());
    // last, so that where it is the thumbnail is too
    write(path(hash, false), picture.full());
    mark(hash);
    return hash;
  }

  /** Marks that a panel takes up or lets go this picture now. */
  synchronized void mark(String hash) {
    try {
      Files.setLastModifiedTime(path(hash, false), FileTime.from(clock.instant()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public byte[] read(String hash, boolean small) {
    try {
      return Files.readAllBytes(path(hash, small));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Takes away the pictures that no panel shows and that none took up or let go after a time. Who
   * adds the same picture meanwhile marks it first, and so keeps it.
   *
   * @param shown the names of the pictures on panels that begin with these letters
   */
  void sweep(Instant before, Function<String, Set<String>> shown) {
    for (Path part : within(folder)) {
      String beginning = part.getFileName().toString();
      Set<String> onPanels = shown.apply(beginning);
      within(part).stream()
          .flatMap(deeper -> within(deeper).stream())
          .map(this::hashOf)
          .filter(hash -> hash.matches(HASH) && !onPanels.contains(hash))
          .forEach(hash -> removeIfMarked(hash, before));
    }
  }

  private synchronized void removeIfMarked(String hash, Instant before) {
    try {
      if (Files.getLastModifiedTime(path(hash, false)).toInstant().isBefore(before)) {
        Files.delete(path(hash, false));
        Files.deleteIfExists(path(hash, true));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> within(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path path(String hash, boolean small) {
    if (!hash.matches(HASH)) {
      throw new IllegalArgumentException("not a picture's name");
    }
    String name = hash.substring(4) + (small ? SMALL : "") + JPEG;
    return folder.resolve(hash.substring(0, 2)).resolve(hash.substring(2, 4)).resolve(name);
  }

  /** The folders and the file's name make up the hash again; no hash for anything else. */
  private String hashOf(Path file) {
    Path below = folder.relativize(file);
    return "" + below.getName(0) + below.getName(1) + below.getName(2).toString().replace(JPEG, "");
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
