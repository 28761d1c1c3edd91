package lapline.signoff.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.signoff.SignOff;

/** The row of one sign-off. */
@Entity
@Table(name = "sign_off")
class SignOffEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "skill_id")
  String skill;

  @Column(name = "rule_version")
  String ruleVersion;

  String code;

  @Enumerated(EnumType.STRING)
  SignOff.State state;

  @Column(name = "granted_by")
  UUID grantedBy;

  @Column(name = "granted_at")
  Instant grantedAt;

  @Column(name = "expires_at")
  Instant expiresAt;

  static SignOffEntity of(SignOff s) {
    SignOffEntity row = new SignOffEntity();
    row.id = s.id();
    row.workshop = s.workshop();
    row.person = s.person();
    row.skill = s.skill();
    row.ruleVersion = s.ruleVersion();
    row.code = s.code();
    row.state = s.state();
    row.grantedBy = s.grantedBy();
    row.grantedAt = s.granted();
    row.expiresAt = s.expires();
    return row;
  }

  SignOff asSignOff() {
    return new SignOff(
        id, workshop, person, skill, ruleVersion, code, state, grantedBy, grantedAt, expiresAt);
  }
}
