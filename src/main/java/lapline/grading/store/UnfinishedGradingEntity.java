package lapline.grading.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.content.Json;
import lapline.grading.DefectMark;
import lapline.grading.UnfinishedGrading;

/** The row of what an instructor has put down about a panel without having decided. */
@Entity
@Table(name = "unfinished_grading")
class UnfinishedGradingEntity {
  @Id UUID id;

  @Column(name = "attempt_id")
  UUID attempt;

  @Column(name = "grader_id")
  UUID grader;

  @Column(name = "kept_at")
  Instant keptAt;

  String remark;
  String seen;

  /** Marks and defects, as the column 'seen' holds them. */
  record Seen(Map<String, Integer> marks, List<DefectMark> defects) {}

  void take(UnfinishedGrading kept) {
    attempt = kept.attempt();
    grader = kept.grader();
    keptAt = kept.at();
    remark = kept.remark();
    seen = Json.write(new Seen(kept.marks(), kept.defects()));
  }

  UnfinishedGrading asUnfinished() {
    Seen read = Json.read(seen, Seen.class);
    return new UnfinishedGrading(attempt, grader, keptAt, remark, read.marks(), read.defects());
  }
}
