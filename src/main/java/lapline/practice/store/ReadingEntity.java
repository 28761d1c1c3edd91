package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;
import lapline.practice.KeptReading;

/** The row of what was typed at one place of a panel's record. */
@Entity
@Table(name = "attempt_reading")
class ReadingEntity {
  @EmbeddedId Key key;

  String typed;

  @Column(name = "typed_at")
  Instant typedAt;

  long revision;

  /** Which panel, and where on its record. */
  @Embeddable
  record Key(@Column(name = "attempt_id") UUID attempt, String cell) implements Serializable {}

  static ReadingEntity at(UUID attempt, String cell) {
    ReadingEntity row = new ReadingEntity();
    row.key = new Key(attempt, cell);
    return row;
  }

  void take(String text, Instant at, long asRevision) {
    typed = text;
    typedAt = at;
    revision = asRevision;
  }

  KeptReading asReading() {
    return new KeptReading(key.cell(), typed, typedAt, revision);
  }
}
