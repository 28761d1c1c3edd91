package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** The row of what a panel was judged under and what came out; apart, because it is long. */
@Entity
@Table(name = "attempt_judgement")
class JudgementEntity {
  @Id
  @Column(name = "attempt_id")
  UUID attempt;

  @JdbcTypeCode(SqlTypes.LONG32VARCHAR)
  @Column(columnDefinition = "text")
  String task;

  @JdbcTypeCode(SqlTypes.LONG32VARCHAR)
  @Column(columnDefinition = "text")
  String score;
}
