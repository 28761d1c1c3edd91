package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.UUID;
import lapline.practice.PanelScore;

/** The row of one likely cause read from a panel, for counting across people. */
@Entity
@Table(name = "attempt_finding")
class FindingEntity {
  @EmbeddedId Key key;

  double support;

  int standing;

  /** Which panel, which cause. */
  @Embeddable
  record Key(@Column(name = "attempt_id") UUID attempt, @Column(name = "finding_id") String finding)
      implements Serializable {}

  static FindingEntity of(UUID attempt, PanelScore.Finding finding, int standing) {
    FindingEntity row = new FindingEntity();
    row.key = new Key(attempt, finding.id());
    row.support = finding.support();
    row.standing = standing;
    return row;
  }
}
