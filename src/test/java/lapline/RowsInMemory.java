package lapline;

import jakarta.persistence.EntityManager;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.hibernate.SessionFactory;
import org.hibernate.cfg.Configuration;

/** A database in memory with the real schema, for tests of what the stores ask of it. */
public final class RowsInMemory implements AutoCloseable {
  private final SessionFactory factory;
  private final EntityManager rows;

  private RowsInMemory(JdbcDataSource database) throws Exception {
    factory = hibernate(database);
    rows = factory.createEntityManager();
  }

  /**
   * @param fill statements that put in what is there from the beginning
   */
  public static RowsInMemory filledBy(String fill) throws Exception {
    JdbcDataSource database = new JdbcDataSource();
    database.setUrl("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
    Flyway.configure()
        .dataSource(database)
        .locations("filesystem:src/main/resources/lapline/migrations")
        .load()
        .migrate();
    try (var connection = database.getConnection();
        var statement = connection.createStatement()) {
      statement.execute(fill);
    }
    return new RowsInMemory(database);
  }

  private static SessionFactory hibernate(JdbcDataSource database) throws Exception {
    Configuration configuration = new Configuration();
    try (var files = Files.walk(Path.of("src/main/java"))) {
      for (Path entity : files.filter(f -> f.toString().endsWith("Entity.java")).toList()) {
        String name = Path.of("src/main/java").relativize(entity).toString();
        configuration.addAnnotatedClass(
            Class.forName(name.replace(".java", "").replace('/', '.').replace('\\', '.')));
      }
    }
    configuration.getProperties().put("hibernate.connection.datasource", database);
    Map<String, String> set =
        Map.of(
            "hibernate.generate_statistics", "true",
            "hibernate.jpa.compliance.query", "false",
            "hibernate.timezone.default_storage", "NORMALIZE_UTC",
            "hibernate.jdbc.time_zone", "UTC",
            "hibernate.default_batch_fetch_size", "50");
    set.forEach(configuration::setProperty);
    return configuration.buildSessionFactory();
  }

  /** Hands the records their database as the server does. */
  public <T> T with(T records) throws ReflectiveOperationException {
    Field field = records.getClass().getDeclaredField("rows");
    field.setAccessible(true);
    field.set(records, rows);
    return records;
  }

  /** How many statements something takes, with nothing remembered from before. */
  public long statements(Runnable what) {
    factory.getStatistics().clear();
    afresh(what);
    return factory.getStatistics().getPrepareStatementCount();
  }

  /** Does something with nothing remembered from before. */
  public void afresh(Runnable what) {
    rows.clear();
    what.run();
  }

  /** Puts in what came later. */
  public void put(String sql) {
    kept(() -> rows.createNativeQuery(sql).executeUpdate());
  }

  /** Does something in a transaction that keeps it. */
  public void kept(Runnable what) {
    rows.getTransaction().begin();
    what.run();
    rows.getTransaction().commit();
    rows.clear();
  }

  /** The same in a transaction that is undone. */
  public Runnable undone(Runnable what) {
    return () -> {
      rows.getTransaction().begin();
      what.run();
      rows.getTransaction().rollback();
    };
  }

  @Override
  public void close() {
    rows.close();
    factory.close();
  }
}
