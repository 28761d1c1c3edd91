package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.practice.TargetOverride;

/** The row of a workshop's own target. */
@Entity
@Table(name = "target_override")
class TargetOverrideEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "task_id")
  String task;

  @Column(name = "criterion_id")
  String criterion;

  String target;
  String sheet;
  String reason;

  @Column(name = "made_by")
  UUID madeBy;

  @Column(name = "made_at")
  Instant madeAt;

  @Column(name = "retired_by")
  UUID retiredBy;

  @Column(name = "retired_at")
  Instant retiredAt;

  static TargetOverrideEntity of(TargetOverride override) {
    TargetOverrideEntity row = new TargetOverrideEntity();
    row.id = override.id();
    row.workshop = override.workshop();
    row.task = override.task();
    row.criterion = override.criterion();
    row.target = override.target();
    row.sheet = override.sheet();
    row.reason = override.reason();
    row.madeBy = override.madeBy();
    row.madeAt = override.made();
    row.retiredBy = override.retiredBy();
    row.retiredAt = override.retired();
    return row;
  }

  TargetOverride asOverride() {
    return new TargetOverride(
        id, workshop, task, criterion, target, sheet, reason, madeBy, madeAt, retiredBy, retiredAt);
  }
}
