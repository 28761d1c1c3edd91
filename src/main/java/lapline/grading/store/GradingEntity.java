package lapline.grading.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.grading.DefectMark;
import lapline.grading.Grading;
import org.hibernate.annotations.BatchSize;

/** The row of one grading with its marks. */
@Entity
@Table(name = "grading")
class GradingEntity {
  @Id UUID id;

  @Column(name = "attempt_id")
  UUID attempt;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "grader_id")
  UUID grader;

  @Column(name = "graded_at")
  Instant gradedAt;

  @Enumerated(EnumType.STRING)
  Grading.Decision decision;

  String remark;

  @ElementCollection
  @BatchSize(size = 20)
  @CollectionTable(name = "rubric_mark", joinColumns = @JoinColumn(name = "grading_id"))
  @MapKeyColumn(name = "item_id")
  @Column(name = "mark")
  Map<String, Integer> marks = new HashMap<>();

  @ElementCollection
  @BatchSize(size = 20)
  @CollectionTable(name = "defect_mark", joinColumns = @JoinColumn(name = "grading_id"))
  @OrderColumn(name = "number")
  List<PlacedDefect> defects = new ArrayList<>();

  /** One defect as a row. */
  @Embeddable
  static class PlacedDefect {
    String kind;
    double x;
    double y;
    String note;
  }

  static GradingEntity of(Grading grading) {
    GradingEntity row = new GradingEntity();
    row.id = grading.id();
    row.attempt = grading.attempt();
    row.workshop = grading.workshop();
    row.grader = grading.grader();
    row.gradedAt = grading.at();
    row.decision = grading.decision();
    row.remark = grading.remark();
    row.marks.putAll(grading.marks());
    for (DefectMark d : grading.defects()) {
      PlacedDefect placed = new PlacedDefect();
      placed.kind = d.kind();
      placed.x = d.x();
      placed.y = d.y();
      placed.note = d.note();
      row.defects.add(placed);
    }
    return row;
  }

  Grading asGrading() {
    List<DefectMark> placed =
        defects.stream().map(d -> new DefectMark(d.kind, d.x, d.y, d.note)).toList();
    return new Grading(id, attempt, workshop, grader, gradedAt, decision, remark, marks, placed);
  }
}
