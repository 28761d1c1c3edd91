package lapline.people.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.people.NameChange;

/** The row of a corrected name. */
@Entity
@Table(name = "name_change")
class NameChangeEntity {
  @Id UUID id;

  @Column(name = "person_id")
  UUID person;

  @Enumerated(EnumType.STRING)
  NameChange.What what;

  @Column(name = "before_text")
  String before;

  @Column(name = "after_text")
  String after;

  @Column(name = "changed_by")
  UUID changedBy;

  @Column(name = "changed_at")
  Instant changedAt;

  static NameChangeEntity of(NameChange change) {
    NameChangeEntity row = new NameChangeEntity();
    row.id = change.id();
    row.person = change.person();
    row.what = change.what();
    row.before = change.before();
    row.after = change.after();
    row.changedBy = change.by();
    row.changedAt = change.at();
    return row;
  }

  NameChange asChange() {
    return new NameChange(id, person, what, before, after, changedBy, changedAt);
  }
}
