package lapline.board.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;
import lapline.board.NeedRecords.Stuck;
import lapline.people.LearnerAdvanced;

/** The row of one learner who misses panel after panel of a task in the same way. */
@Entity
@Table(name = "stuck_learner")
class StuckEntity {
  @EmbeddedId Key key;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "finding_id")
  String finding;

  int panels;

  @Column(name = "last_at")
  Instant last;

  /** Who, at what. */
  @Embeddable
  record Key(@Column(name = "person_id") UUID person, @Column(name = "task_id") String task)
      implements Serializable {}

  static StuckEntity of(LearnerAdvanced who, Stuck stuck) {
    StuckEntity row = new StuckEntity();
    row.key = new Key(who.person(), stuck.task());
    row.workshop = who.workshop();
    row.unit = who.unit();
    row.finding = stuck.finding();
    row.panels = stuck.panels();
    row.last = stuck.last();
    return row;
  }
}
