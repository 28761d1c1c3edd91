package lapline.exams.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import lapline.exams.MarkedAnew;

/** The row of a paper that was marked anew. */
@Entity
@Table(name = "paper_marked_anew")
class PaperMarkedAnewEntity {
  @Id UUID id;

  @Column(name = "paper_id")
  UUID paper;

  @Column(name = "marked_at")
  Instant at;

  @Column(name = "marked_by")
  UUID by;

  @Column(name = "item_id")
  String item;

  @Column(name = "left_out")
  boolean leftOut;

  String reason;

  @Column(name = "score_before")
  double scoreBefore;

  @Column(name = "passed_before")
  boolean passedBefore;

  @Column(name = "without_before")
  String withoutBefore;

  @Column(name = "score_after")
  double scoreAfter;

  @Column(name = "passed_after")
  boolean passedAfter;

  @Column(name = "without_after")
  String withoutAfter;

  static PaperMarkedAnewEntity of(MarkedAnew anew) {
    PaperMarkedAnewEntity row = new PaperMarkedAnewEntity();
    row.id = anew.id();
    row.paper = anew.paper();
    row.at = anew.at();
    row.by = anew.by();
    row.item = anew.item();
    row.leftOut = anew.leftOut();
    row.reason = anew.reason();
    row.scoreBefore = anew.before().score();
    row.passedBefore = anew.before().passed();
    row.withoutBefore = line(anew.before().without());
    row.scoreAfter = anew.after().score();
    row.passedAfter = anew.after().passed();
    row.withoutAfter = line(anew.after().without());
    return row;
  }

  MarkedAnew read() {
    return new MarkedAnew(
        id,
        paper,
        at,
        by,
        item,
        leftOut,
        reason,
        new MarkedAnew.Mark(scoreBefore, passedBefore, ids(withoutBefore)),
        new MarkedAnew.Mark(scoreAfter, passedAfter, ids(withoutAfter)));
  }

  private static String line(Set<String> ids) {
    return String.join(",", new TreeSet<>(ids));
  }

  private static Set<String> ids(String line) {
    return line.isEmpty() ? Set.of() : Set.of(line.split(","));
  }
}
