package lapline.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder of hand-written files that hold the course: {@code curriculum/} and {@code
 * question-banks/}.
 */
public final class ContentFiles {
  private final Path root;

  /**
   * @param root the folder that has {@code curriculum} in it; in the server this is {@code
   *     ServletContext.getRealPath("/WEB-INF/classes")}
   */
  public ContentFiles(Path root) {
    this.root = root.toAbsolutePath().normalize();
  }

  /**
   * The files beside the compiled classes, for tests outside the server.
   *
   * @throws IllegalStateException when the class path holds no folder of that name
   */
  public static ContentFiles fromClasspath() {
    URL found = Thread.currentThread().getContextClassLoader().getResource("curriculum");
    if (found == null || !found.getProtocol().equals("file")) {
      throw new IllegalStateException("no folder curriculum on the class path: " + found);
    }
    try {
      return new ContentFiles(Path.of(found.toURI()).getParent());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("not a path: " + found, e);
    }
  }

  /**
   * Paths of all files in a folder and below it, in order.
   *
   * @param ending such as {@code .yaml}
   * @return empty when there is no such folder
   */
  public List<String> list(String folder, String ending) {
    Path start = inside(folder);
    if (!Files.isDirectory(start)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(start)) {
      return files
          .filter(Files::isRegularFile)
          .map(this::name)
          .filter(n -> n.endsWith(ending))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }

  public boolean has(String path) {
    return Files.isRegularFile(inside(path));
  }

  /** A file's bytes, for drawings; empty when there is no such file. */
  public Optional<byte[]> bytes(String path) {
    Path file = inside(path);
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path, e);
    }
  }

  /** A file's text; empty, with the reason among the problems, when it is missing or not UTF-8. */
  public Optional<ContentFile> read(String path, Problems problems) {
    Optional<byte[]> bytes = bytes(path);
    if (bytes.isEmpty()) {
      problems.add(0, "there is no such file", "add it, or mend the name where it is referred to");
      return Optional.empty();
    }
    return Utf8.decode(bytes.get(), problems).map(text -> new ContentFile(path, text));
  }

  private Path inside(String path) {
    Path file = root.resolve(path).normalize();
    if (!file.startsWith(root)) {
      throw new IllegalArgumentException("outside the content folder: " + path);
    }
    return file;
  }

  private String name(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }
}
