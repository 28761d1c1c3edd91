package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.UUID;
import lapline.practice.PanelScore;
import lapline.trade.measure.Verdict;

/** The row of one criterion's answer, for counting across people. */
@Entity
@Table(name = "attempt_verdict")
class VerdictEntity {
  @EmbeddedId Key key;

  boolean judged;

  @Enumerated(EnumType.STRING)
  Verdict verdict;

  Double conformance;

  @Column(name = "uncertainty_share")
  Double uncertaintyShare;

  /** Which panel, which criterion. */
  @Embeddable
  record Key(
      @Column(name = "attempt_id") UUID attempt, @Column(name = "criterion_id") String criterion)
      implements Serializable {}

  static VerdictEntity of(UUID attempt, PanelScore.Result result) {
    VerdictEntity row = new VerdictEntity();
    row.key = new Key(attempt, result.criterion().id());
    row.judged = result.judged();
    row.verdict = result.judged() ? result.verdict() : null;
    row.conformance = result.judged() ? result.conformance() : null;
    row.uncertaintyShare = result.uncertaintyShare().orElse(null);
    return row;
  }
}
