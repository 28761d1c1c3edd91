package lapline.lessons.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;

/** The row of the latest answer to one check. */
@Entity
@Table(name = "check_answer")
class CheckAnswerEntity {
  @EmbeddedId Key key;
  String chosen;

  @Column(name = "was_right")
  boolean right;

  @Column(name = "answered_at")
  Instant answeredAt;

  /** Who answered which check. */
  @Embeddable
  record Key(
      @Column(name = "person_id") UUID person,
      @Column(name = "unit_id") String unit,
      @Column(name = "check_id") String check)
      implements Serializable {}
}
