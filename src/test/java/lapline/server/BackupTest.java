package lapline.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.h2.jdbcx.JdbcDataSource;
import org.h2.tools.Restore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The copy of the database: whole while work goes on, one for each day, fourteen kept. */
class BackupTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
  @TempDir private Path data;

  @Test
  void what_was_committed_stands_in_the_copy_that_is_made_while_others_write() throws Exception {
    JdbcDataSource database = database(data);
    try (Connection rows = database.getConnection()) {
      rows.createStatement().execute("create table panel (name varchar(20))");
      rows.createStatement().execute("insert into panel values ('kept')");
      rows.setAutoCommit(false);
      rows.createStatement().execute("insert into panel values ('unfinished')");
      Backup.keep(database, data, DAY);
      assertThat(names(restored())).containsExactly("kept");
    }
  }

  @Test
  void each_day_has_one_copy_and_fourteen_days_are_kept() throws Exception {
    JdbcDataSource database = database(data);
    try (Connection open = database.getConnection()) {
      for (int day = 0; day < 20; day++) {
        Backup.keep(database, data, DAY.plusDays(day));
        Backup.keep(database, data, DAY.plusDays(day));
      }
    }
    try (Stream<Path> copies = Files.list(data.resolve("backups"))) {
      assertThat(copies.map(c -> c.getFileName().toString()))
          .hasSize(14)
          .contains("lapline-2026-03-20.zip", "lapline-2026-03-07.zip");
    }
  }

  private JdbcDataSource restored() {
    Path again = data.resolve("again");
    Restore.execute(
        data.resolve("backups/lapline-2026-03-01.zip").toString(), again.toString(), null);
    return database(again);
  }

  private static JdbcDataSource database(Path folder) {
    JdbcDataSource source = new JdbcDataSource();
    source.setURL("jdbc:h2:file:" + folder + "/lapline");
    return source;
  }

  private static List<String> names(JdbcDataSource database) throws SQLException {
    try (Connection rows = database.getConnection();
        var found = rows.createStatement().executeQuery("select name from panel")) {
      List<String> names = new ArrayList<>();
      while (found.next()) {
        names.add(found.getString(1));
      }
      return names;
    }
  }
}
