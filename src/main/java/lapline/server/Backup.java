package lapline.server;

import static java.time.ZoneId.systemDefault;

import jakarta.annotation.PreDestroy;
import jakarta.annotation.Resource;
import jakarta.enterprise.concurrent.ManagedScheduledExecutorService;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.sql.DataSource;

/**
 * An hourly copy of the H2 database in the data folder, whole even while people work, so that
 * whoever copies the folder has a good one. PostgreSQL has its own means and is left to them.
 */
@ApplicationScoped
public class Backup {
  private static final Logger LOG = Logger.getLogger("lapline.backup");
  private static final int DAYS_KEPT = 14;

  @Resource(lookup = "java:jboss/datasources/lapline")
  private DataSource database;

  @Resource private ManagedScheduledExecutorService hours;
  @Inject private Settings settings;
  @Inject private Clock clock;
  private ScheduledFuture<?> everyHour;

  /** The first copy is made at once, before anything new touches the rows. */
  void begin() {
    keepNow();
    everyHour = hours.scheduleAtFixedRate(this::keepNow, 1, 1, TimeUnit.HOURS);
  }

  @PreDestroy
  void end() {
    if (everyHour != null) {
      everyHour.cancel(false);
    }
  }

  private void keepNow() {
    keep(database, settings.dataFolder(), LocalDate.ofInstant(clock.instant(), systemDefault()));
  }

  /** Makes the day's copy afresh, and takes away the oldest beyond fourteen days. */
  static void keep(DataSource database, Path dataFolder, LocalDate day) {
    Path folder = dataFolder.resolve("backups");
    Path copy = folder.resolve("lapline-" + day + ".zip");
    try (Connection rows = database.getConnection()) {
      if ("H2".equals(rows.getMetaData().getDatabaseProductName())) {
        Files.createDirectories(folder);
        copy(rows, copy);
        takeAwayOldest(folder);
      }
    } catch (SQLException | IOException e) {
      LOG.log(Level.WARNING, "the day's copy of the database could not be made: " + copy, e);
    }
  }

  /** Under another name until it is whole, so that a half copy is never taken for a good one. */
  private static void copy(Connection rows, Path copy) throws SQLException, IOException {
    Path half = copy.resolveSibling(copy.getFileName() + ".half");
    try (Statement order = rows.createStatement()) {
      order.execute("backup to '" + half.toString().replace("'", "''") + "'");
    }
    Files.move(half, copy, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void takeAwayOldest(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> newestFirst =
          files
              .filter(f -> f.getFileName().toString().matches("lapline-[\\d-]+\\.zip"))
              .sorted(Comparator.reverseOrder())
              .toList();
      newestFirst.stream().skip(DAYS_KEPT).forEach(Backup::delete);
    }
  }

  private static void delete(Path file) {
    try {
      Files.delete(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
