package lapline.benchmarks;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Colour libraries of another language, fetched and timed on the same pairs, where it is there. */
final class NodeLibraries {
  private static final List<String> LIBRARIES = List.of("culori@4.0.2", "colorjs.io@0.7.1");
  private static final String SCRIPT = "colour-difference.mjs";
  private static final int RUNS = 7;

  private final Path folder;

  NodeLibraries(Path folder) {
    this.folder = folder;
  }

  /** What one library took for all pairs. */
  record Timed(String name, String version, double milliseconds, double sum) {}

  /** Why nothing was measured; empty where something was. */
  record Outcome(String whyNot, List<Timed> libraries) {}

  Outcome time(double[] pairs) {
    try {
      if (failed("node", "--version")) {
        return new Outcome("no node", List.of());
      }
      Files.createDirectories(folder);
      lay(pairs);
      List<String> install = new ArrayList<>(List.of("npm", "install", "--silent", "--no-audit"));
      install.add("--no-fund");
      install.addAll(List.of("--prefix", folder.toString()));
      install.addAll(LIBRARIES);
      if (failed(install.toArray(String[]::new))) {
        return new Outcome("npm could not fetch " + LIBRARIES, List.of());
      }
      return new Outcome("", run());
    } catch (IOException e) {
      return new Outcome(e.getMessage(), List.of());
    }
  }

  private void lay(double[] pairs) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(8 * pairs.length).order(ByteOrder.LITTLE_ENDIAN);
    bytes.asDoubleBuffer().put(pairs);
    Files.write(folder.resolve("pairs"), bytes.array());
    try (var script = NodeLibraries.class.getResourceAsStream(SCRIPT)) {
      Files.copy(script, folder.resolve(SCRIPT), StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private List<Timed> run() throws IOException {
    Process process =
        new ProcessBuilder("node", SCRIPT, "pairs", "" + RUNS)
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (var lines = process.inputReader()) {
      return lines
          .lines()
          .map(line -> line.split(" "))
          .map(w -> new Timed(w[0], w[1], Double.parseDouble(w[2]), Double.parseDouble(w[3])))
          .toList();
    }
  }

  private static boolean failed(String... command) {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return !process.waitFor(3, TimeUnit.MINUTES) || process.exitValue() != 0;
    } catch (IOException notThere) {
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    }
  }
}
