package lapline.people.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.ZoneId;
import java.util.UUID;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;

/** The row of one workshop. */
@Entity
@Table(name = "workshop")
class WorkshopEntity {
  @Id UUID id;
  String name;
  String zone;

  @Enumerated(EnumType.STRING)
  UnitSystem units;

  @Column(name = "created_at")
  Instant createdAt;

  // through methods, since Hibernate may stand a proxy in whose fields are empty
  public Workshop asWorkshop() {
    return new Workshop(id, name, ZoneId.of(zone), units);
  }

  void take(Workshop workshop) {
    name = workshop.name();
    zone = workshop.zone().getId();
    units = workshop.units();
  }
}
