package lapline.exams.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.content.Json;
import lapline.exams.Paper;
import lapline.exams.PaperResult;
import lapline.exams.Sitting;

/** The row of one paper. */
@Entity
@Table(name = "paper")
class PaperEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "open_key")
  String openKey;

  @Column(name = "drawn_at")
  Instant drawnAt;

  @Column(name = "handed_in_at")
  Instant handedInAt;

  Double score;

  Boolean passed;

  // both are 'text' in the schema, which both databases report as a long varchar
  String questions;
  String result;

  static PaperEntity of(Sitting sitting, Paper paper) {
    PaperEntity row = new PaperEntity();
    row.id = sitting.id();
    row.workshop = sitting.workshop();
    row.person = sitting.person();
    row.unit = sitting.unit();
    row.openKey = openKey(sitting.person(), sitting.unit());
    row.drawnAt = sitting.drawn();
    row.questions = Json.write(paper);
    return row;
  }

  void close(Sitting.Outcome outcome, PaperResult marked) {
    openKey = null;
    handedInAt = outcome.handedIn();
    score = outcome.score();
    passed = outcome.passed();
    result = Json.write(marked);
  }

  static String openKey(UUID person, String unit) {
    return person + " " + unit;
  }
}
