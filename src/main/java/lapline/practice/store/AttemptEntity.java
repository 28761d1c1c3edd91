package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.content.Json;
import lapline.practice.Again;
import lapline.practice.Attempt;
import lapline.trade.measure.UnitSystem;

/** The row of one attempt. */
@Entity
@Table(name = "attempt")
class AttemptEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "task_id")
  String task;

  @Column(name = "task_version")
  String taskVersion;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "skill_id")
  String skill;

  @Column(name = "sheet_code")
  String sheetCode;

  @Enumerated(EnumType.STRING)
  Attempt.State state;

  @Column(name = "open_key")
  String openKey;

  @Column(name = "gun_card_id")
  UUID gunCard;

  @Enumerated(EnumType.STRING)
  UnitSystem units;

  @Column(name = "changed_what")
  String changedWhat;

  long revision;

  @Column(name = "started_at")
  Instant startedAt;

  @Column(name = "scored_at")
  Instant scoredAt;

  @Column(name = "practice_score")
  Double practiceScore;

  Boolean accepted;

  @Column(name = "submit_key")
  String submitKey;

  /** As JSON; null where its readings were never opened again. */
  String again;

  static AttemptEntity of(Attempt draft) {
    AttemptEntity row = new AttemptEntity();
    row.id = draft.id();
    row.workshop = draft.workshop();
    row.person = draft.person();
    row.task = draft.task();
    row.taskVersion = draft.taskVersion();
    row.unit = draft.unit();
    row.skill = draft.skill();
    row.sheetCode = draft.sheetCode();
    row.gunCard = draft.gunCard();
    row.units = draft.units();
    row.changedWhat = draft.changedWhat();
    row.revision = draft.revision();
    row.startedAt = draft.started();
    row.becomeDraft();
    return row;
  }

  void becomeDraft() {
    state = Attempt.State.DRAFT;
    openKey = openKey(person, task);
    scoredAt = null;
    practiceScore = null;
    accepted = null;
    submitKey = null;
  }

  void becomeScored(Attempt scored, String bySubmitKey) {
    state = Attempt.State.SCORED;
    openKey = null;
    taskVersion = scored.taskVersion();
    scoredAt = scored.outcome().scored();
    practiceScore = scored.outcome().practiceScore();
    accepted = scored.outcome().accepted();
    submitKey = bySubmitKey;
  }

  static String openKey(UUID person, String task) {
    return person + " " + task;
  }

  Attempt asAttempt() {
    return new Attempt(
        id,
        workshop,
        person,
        task,
        taskVersion,
        unit,
        skill,
        sheetCode,
        changedWhat,
        gunCard,
        units,
        state,
        revision,
        startedAt,
        scoredAt == null ? null : new Attempt.Outcome(scoredAt, practiceScore, accepted),
        again == null ? null : Json.read(again, Again.class));
  }
}
