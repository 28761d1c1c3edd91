package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.practice.photographs.Photograph;

/** The row of one photograph of a panel; the picture lies in a file. */
@Entity
@Table(name = "photograph")
class PhotographEntity {
  @Id UUID id;

  @Column(name = "attempt_id")
  UUID attempt;

  String hash;
  String caption;
  int width;
  int height;

  @Column(name = "added_at")
  Instant addedAt;

  static PhotographEntity of(Photograph photograph) {
    PhotographEntity row = new PhotographEntity();
    row.id = photograph.id();
    row.attempt = photograph.attempt();
    row.hash = photograph.hash();
    row.caption = photograph.caption();
    row.width = photograph.width();
    row.height = photograph.height();
    row.addedAt = photograph.at();
    return row;
  }

  Photograph asPhotograph() {
    return new Photograph(id, attempt, hash, caption, width, height, addedAt);
  }
}
