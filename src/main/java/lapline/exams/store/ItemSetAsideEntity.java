package lapline.exams.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.exams.ItemRecords.SetAside;

/** The row of an item that was set aside. */
@Entity
@Table(name = "item_set_aside")
class ItemSetAsideEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "unit_id")
  String unit;

  @Column(name = "item_id")
  String item;

  @Column(name = "set_aside_at")
  Instant at;

  @Column(name = "set_aside_by")
  UUID by;

  String reason;

  @Column(name = "open_key")
  String openKey;

  @Column(name = "back_at")
  Instant back;

  @Column(name = "back_by")
  UUID backBy;

  static ItemSetAsideEntity of(SetAside aside) {
    ItemSetAsideEntity row = new ItemSetAsideEntity();
    row.id = aside.id();
    row.workshop = aside.workshop();
    row.unit = aside.unit();
    row.item = aside.item();
    row.at = aside.at();
    row.by = aside.by();
    row.reason = aside.reason();
    row.openKey = openKey(aside.workshop(), aside.unit(), aside.item());
    return row;
  }

  SetAside read() {
    return new SetAside(id, workshop, unit, item, at, by, reason, back, backBy);
  }

  static String openKey(UUID workshop, String unit, String item) {
    return workshop + " " + unit + " " + item;
  }
}
