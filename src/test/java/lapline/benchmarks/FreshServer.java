package lapline.benchmarks;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import lapline.journeys.Caller;

/** The built server, started as a workshop starts it, on an empty data folder. */
final class FreshServer implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofMinutes(10);

  private final Process process;
  private final Path log;
  private final double secondsToFirstPage;

  private FreshServer(Process process, Path log) {
    this.process = process;
    this.log = log;
    this.secondsToFirstPage = secondsUntil(FreshServer::answers);
  }

  /**
   * @param demo with the invented workshop, whose half year is told in the background from the
   *     start
   */
  static FreshServer start(Path home, Path data, int portOffset, boolean demo) throws IOException {
    empty(data);
    Path log = data.resolveSibling("benchmark-server.log");
    Process process =
        new ProcessBuilder(
                "bash",
                home.resolve("bin/lapline.sh").toString(),
                "-Djboss.socket.binding.port-offset=" + portOffset,
                "-Dlapline.data=" + data,
                "-Dlapline.demo=" + demo)
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    return new FreshServer(process, log);
  }

  double secondsToFirstPage() {
    return secondsToFirstPage;
  }

  /** Waits until the invented half year lies in the database. */
  double secondsToEndOfStory() {
    return secondsUntil(() -> read(log).contains("Demo half year made"));
  }

  private double secondsUntil(BooleanSupplier there) {
    long began = System.nanoTime();
    while (!there.getAsBoolean()) {
      if (!process.isAlive() || System.nanoTime() - began > PATIENCE.toNanos()) {
        close();
        throw new IllegalStateException("Lapline did not come so far; read " + log);
      }
      pause();
    }
    return (System.nanoTime() - began) / 1e9;
  }

  private static boolean answers() {
    try {
      return new Caller().get("/sign-in").status() == 200;
    } catch (IllegalStateException notYet) {
      return false;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(100);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void empty(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
    }
    Files.createDirectories(folder);
  }

  @Override
  public void close() {
    process.destroy();
    try {
      process.waitFor(30, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
