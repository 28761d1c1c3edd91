package lapline.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import jakarta.persistence.EntityManagerFactory;
import jakarta.persistence.Persistence;
import java.io.IOException;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The numbered SQL runs on PostgreSQL too, and every stored thing fits what it makes there. */
class SchemaOnPostgreSqlTest {
  private static EmbeddedPostgres server;

  @BeforeAll
  static void start() throws IOException {
    try {
      server = EmbeddedPostgres.start();
    } catch (IllegalStateException e) {
      Assumptions.abort("skipped, no PostgreSQL for this kind of machine: " + e.getMessage());
    }
  }

  @AfterAll
  static void stop() throws IOException {
    if (server != null) {
      server.close();
    }
  }

  @Test
  void all_migrations_run_and_all_mappings_fit() {
    Schema.migrate(server.getPostgresDatabase());
    try (EntityManagerFactory factory = mappings(server.getPostgresDatabase())) {
      assertThat(factory.getMetamodel().getEntities()).hasSizeGreaterThan(15);
      assertThatCode(() -> Schema.check(factory)).doesNotThrowAnyException();
    }
  }

  private static EntityManagerFactory mappings(DataSource database) {
    return Persistence.createEntityManagerFactory(
        "lapline",
        Map.of(
            "jakarta.persistence.transactionType",
            "RESOURCE_LOCAL",
            "jakarta.persistence.nonJtaDataSource",
            database));
  }
}
