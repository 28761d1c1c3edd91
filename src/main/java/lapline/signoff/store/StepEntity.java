package lapline.signoff.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.signoff.Step;

/** The row of one step that was taken; rows are only ever added. */
@Entity
@Table(name = "sign_off_step")
class StepEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "skill_id")
  String skill;

  @Column(name = "sign_off_id")
  UUID signOff;

  @Enumerated(EnumType.STRING)
  Step.Kind kind;

  @Column(name = "taken_by")
  UUID takenBy;

  @Column(name = "taken_at")
  Instant takenAt;

  String reason;

  String evidence;

  static StepEntity of(Step s) {
    StepEntity row = new StepEntity();
    row.id = s.id();
    row.workshop = s.workshop();
    row.person = s.person();
    row.skill = s.skill();
    row.signOff = s.signOff();
    row.kind = s.kind();
    row.takenBy = s.by();
    row.takenAt = s.at();
    row.reason = s.reason();
    row.evidence = s.evidence();
    return row;
  }

  Step asStep() {
    return new Step(id, workshop, person, skill, signOff, kind, takenBy, takenAt, reason, evidence);
  }
}
