package lapline.server;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A PostgreSQL that the build starts beside the test server ({@code mvn verify -Ppostgresql}). It
 * runs until the build is gone, or until the file that says it runs is taken away.
 */
final class PostgreSqlForTests {
  private PostgreSqlForTests() {}

  /**
   * @param given the port, and the file that stands there while the database runs
   */
  public static void main(String[] given) throws IOException, InterruptedException {
    Path running = Path.of(given[1]);
    try (EmbeddedPostgres server =
        EmbeddedPostgres.builder().setPort(Integer.parseInt(given[0])).start()) {
      Files.writeString(running, server.getJdbcUrl("postgres", "postgres"));
      waitWhile(running);
    } finally {
      Files.deleteIfExists(running);
    }
  }

  private static void waitWhile(Path running) throws InterruptedException {
    ProcessHandle build = ProcessHandle.current().parent().orElseThrow();
    while (Files.exists(running) && build.isAlive()) {
      Thread.sleep(500);
    }
  }
}
