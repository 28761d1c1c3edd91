package lapline.signoff.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;
import lapline.signoff.Standing;

/** The row of where one learner stands towards one skill. */
@Entity
@Table(name = "skill_standing")
class StandingEntity {
  @EmbeddedId Key key;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "lesson_done")
  boolean lessonDone;

  @Column(name = "exam_passed")
  boolean examPassed;

  @Column(name = "panels_counting")
  int panelsCounting;

  @Column(name = "panels_needed")
  int panelsNeeded;

  @Column(name = "graded_counting")
  int gradedCounting;

  @Column(name = "graded_needed")
  int gradedNeeded;

  @Column(name = "on_the_way")
  boolean onTheWay;

  @Column(name = "panels_waiting")
  int panelsWaiting;

  @Column(name = "waiting_since")
  Instant waitingSince;

  @Column(name = "holds_until")
  Instant holdsUntil;

  @Column(name = "ready_since")
  Instant readySince;

  @Column(name = "changed_at")
  Instant changedAt;

  /** Who stands towards what. */
  @Embeddable
  record Key(@Column(name = "person_id") UUID person, @Column(name = "skill_id") String skill)
      implements Serializable {}

  static StandingEntity of(Standing s) {
    StandingEntity row = new StandingEntity();
    row.key = new Key(s.person(), s.skill());
    row.workshop = s.workshop();
    row.lessonDone = s.lessonDone();
    row.examPassed = s.examPassed();
    row.panelsCounting = s.panelsCounting();
    row.panelsNeeded = s.panelsNeeded();
    row.gradedCounting = s.gradedCounting();
    row.gradedNeeded = s.gradedNeeded();
    row.onTheWay = s.onTheWay();
    row.panelsWaiting = s.panelsWaiting();
    row.waitingSince = s.waitingSince();
    row.holdsUntil = s.holdsUntil();
    row.readySince = s.readySince();
    row.changedAt = s.changed();
    return row;
  }

  Standing asStanding() {
    return new Standing(
        key.person(),
        workshop,
        key.skill(),
        lessonDone,
        examPassed,
        onTheWay,
        panelsCounting,
        panelsNeeded,
        gradedCounting,
        gradedNeeded,
        panelsWaiting,
        waitingSince,
        readySince,
        holdsUntil,
        changedAt);
  }
}
