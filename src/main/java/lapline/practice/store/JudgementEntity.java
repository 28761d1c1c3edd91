package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** The row of what a panel was judged under and what came out; apart, because it is long. */
@Entity
@Table(name = "attempt_judgement")
class JudgementEntity {
  @Id
  @Column(name = "attempt_id")
  UUID attempt;

  // both are 'text' in the schema, which both databases report as a long varchar
  String task;
  String score;
}
