package lapline.lessons.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;

/** The row of a lesson that somebody read to its end. */
@Entity
@Table(name = "lesson_reading")
class LessonReadingEntity {
  @EmbeddedId Key key;
  String version;

  @Column(name = "read_at")
  Instant readAt;

  /** Who read what. */
  @Embeddable
  record Key(@Column(name = "person_id") UUID person, @Column(name = "unit_id") String unit)
      implements Serializable {}
}
