package lapline.exams.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;

/** The row of what is written at one place of a paper. */
@Entity
@Table(name = "paper_answer")
class PaperAnswerEntity {
  @EmbeddedId Key key;
  String typed;

  @Column(name = "typed_at")
  Instant typedAt;

  /** A place on a paper. */
  @Embeddable
  record Key(@Column(name = "paper_id") UUID paper, String cell) implements Serializable {}
}
