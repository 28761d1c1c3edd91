package lapline.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;

/** What was typed before quantities had units of their own still means what it meant. */
class SpokenUnitsMigrationTest {
  private static final String METRIC = "00000000-0000-0000-0000-000000000001";
  private static final String US = "00000000-0000-0000-0000-000000000002";

  @Test
  void a_bare_number_of_before_keeps_its_meaning_by_its_unit() throws SQLException {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL("jdbc:h2:mem:spoken-units;DB_CLOSE_DELAY=-1");
    before(database);
    typed(database, METRIC, "work-time", "42");
    typed(database, METRIC, "flash.c2", "9 1/2");
    typed(database, METRIC, "flash.c3", "10 min");
    typed(database, METRIC, "tape-used", "8 000,5");
    typed(database, METRIC, "tip-size", "1.3");
    typed(database, METRIC, "fan-width", "230");
    typed(database, US, "work-time", "25:00");
    typed(database, US, "tape-used", "300");
    typed(database, US, "tip-size", ".05");
    Schema.migrate(database);
    assertThat(typed(database))
        .containsEntry(METRIC + " work-time", "42 s")
        .containsEntry(METRIC + " flash.c2", "9 1/2 s")
        .containsEntry(METRIC + " flash.c3", "10 min")
        .containsEntry(METRIC + " tape-used", "8 000,5 mm")
        .containsEntry(METRIC + " tip-size", "1.3")
        .containsEntry(METRIC + " fan-width", "230")
        .containsEntry(US + " work-time", "25:00")
        .containsEntry(US + " tape-used", "300 in")
        .containsEntry(US + " tip-size", ".05 in");
  }

  /** A database as it was before, with a panel of each system; who wrote them is left out. */
  private static void before(DataSource database) throws SQLException {
    Flyway.configure()
        .dataSource(database)
        .locations("classpath:lapline/migrations")
        .target("16")
        .load()
        .migrate();
    run(database, "set referential_integrity false");
    for (String[] panel : new String[][] {{METRIC, "METRIC"}, {US, "US"}}) {
      run(
          database,
          "insert into attempt (id, workshop_id, person_id, task_id, task_version, unit_id, skill_id,"
              + " sheet_code, state, changed_what, revision, started_at, units)"
              + " values ('%1$s', '%1$s', '%1$s', 't', 'v', 'u', 's', '%2$s', 'DRAFT', '', 1, now(), '%2$s')"
                  .formatted((Object[]) panel));
    }
  }

  private static void typed(DataSource database, String panel, String cell, String text)
      throws SQLException {
    run(
        database,
        "insert into attempt_reading (attempt_id, cell, typed, typed_at, revision)"
            + " values ('%s', '%s', '%s', now(), 1)".formatted(panel, cell, text));
  }

  private static void run(DataSource database, String sql) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static Map<String, String> typed(DataSource database) throws SQLException {
    Map<String, String> typed = new TreeMap<>();
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("select * from attempt_reading")) {
      while (rows.next()) {
        typed.put(
            rows.getString("attempt_id") + " " + rows.getString("cell"), rows.getString("typed"));
      }
    }
    return typed;
  }
}
