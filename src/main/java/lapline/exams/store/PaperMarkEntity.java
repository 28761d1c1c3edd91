package lapline.exams.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.UUID;
import lapline.exams.ItemMark;
import lapline.exams.bank.ItemKind;

/** The row of how one item was answered on one paper. */
@Entity
@Table(name = "paper_mark")
class PaperMarkEntity {
  private static final int ROOM = 200;

  @EmbeddedId Key key;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "item_version")
  String itemVersion;

  @Enumerated(EnumType.STRING)
  ItemKind kind;

  double mark;

  @Enumerated(EnumType.STRING)
  ItemMark.State state;

  String given;

  @Column(name = "left_out")
  boolean leftOut;

  /** An item on a paper. */
  @Embeddable
  record Key(@Column(name = "paper_id") UUID paper, @Column(name = "item_id") String item)
      implements Serializable {}

  static PaperMarkEntity of(UUID paper, String unit, ItemMark mark) {
    PaperMarkEntity row = new PaperMarkEntity();
    row.key = new Key(paper, mark.item());
    row.unit = unit;
    row.itemVersion = mark.version();
    row.kind = mark.kind();
    row.mark = mark.mark();
    row.state = mark.state();
    row.given = mark.given().length() > ROOM ? mark.given().substring(0, ROOM) : mark.given();
    return row;
  }
}
