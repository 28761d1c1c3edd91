package lapline.board.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.board.NeedRecords.Returned;
import lapline.people.LearnerAdvanced;

/** The row of one panel that was sent back and is the last scored one of its task. */
@Entity
@Table(name = "returned_panel")
class ReturnedEntity {
  @Id
  @Column(name = "attempt_id")
  UUID attempt;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "task_id")
  String task;

  @Column(name = "started_at")
  Instant startedAt;

  @Column(name = "returned_at")
  Instant returnedAt;

  String remark;

  static ReturnedEntity of(LearnerAdvanced who, Returned returned) {
    ReturnedEntity row = new ReturnedEntity();
    row.attempt = returned.attempt();
    row.workshop = who.workshop();
    row.person = who.person();
    row.unit = who.unit();
    row.task = returned.task();
    row.startedAt = returned.begun();
    row.returnedAt = returned.at();
    row.remark = returned.remark();
    return row;
  }
}
