package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;
import lapline.practice.Attempt;
import lapline.practice.PanelScore;
import lapline.trade.measure.Dimension;

/** The row of one likely cause read from a panel, for counting across people. */
@Entity
@Table(name = "attempt_finding")
class FindingEntity {
  @EmbeddedId Key key;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "task_id")
  String task;

  @Column(name = "scored_at")
  Instant scoredAt;

  double support;

  int standing;

  @Column(name = "off_value")
  Double off;

  @Column(name = "off_uncertainty")
  Double offUncertainty;

  /** Null where the uncertainty is taken as known. */
  @Column(name = "off_freedom")
  Double offFreedom;

  @Enumerated(EnumType.STRING)
  @Column(name = "off_dimension")
  Dimension offDimension;

  /** Which panel, which cause. */
  @Embeddable
  record Key(@Column(name = "attempt_id") UUID attempt, @Column(name = "finding_id") String finding)
      implements Serializable {}

  static FindingEntity of(Attempt scored, PanelScore.Finding finding, int standing) {
    FindingEntity row = new FindingEntity();
    row.key = new Key(scored.id(), finding.id());
    row.workshop = scored.workshop();
    row.person = scored.person();
    row.unit = scored.unit();
    row.task = scored.task();
    row.scoredAt = scored.outcome().scored();
    row.support = finding.support();
    row.standing = standing;
    row.putOut(finding.off());
    return row;
  }

  private void putOut(PanelScore.Off by) {
    if (by != null && Double.isFinite(by.value())) {
      off = by.value();
      offUncertainty = by.standardUncertainty();
      offFreedom = by.degreesOfFreedom();
      offDimension = by.dimension();
    }
  }
}
