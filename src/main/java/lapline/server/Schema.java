package lapline.server;

import jakarta.annotation.Resource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManagerFactory;
import jakarta.persistence.PersistenceUnit;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.hibernate.SessionFactory;

/** Brings the database up to date by the numbered SQL, then has Hibernate check its mapping. */
@ApplicationScoped
public class Schema {
  @Resource(lookup = "java:jboss/datasources/lapline")
  private DataSource database;

  @PersistenceUnit private EntityManagerFactory factory;

  void bringUpToDate() {
    migrate(database);
    check(factory);
  }

  static void migrate(DataSource database) {
    Flyway.configure(Schema.class.getClassLoader())
        .dataSource(database)
        .locations("classpath:lapline/migrations")
        // each feature numbers its own range, so a new one may stand below what has run already
        .outOfOrder(true)
        .load()
        .migrate();
  }

  static void check(EntityManagerFactory factory) {
    factory.unwrap(SessionFactory.class).getSchemaManager().validateMappedObjects();
  }
}
