package lapline.practice.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.practice.GunCard;

/** The row of a gun card. */
@Entity
@Table(name = "gun_card")
class GunCardEntity {
  @Id UUID id;

  @Column(name = "workshop_id")
  UUID workshop;

  String name;
  String distance;
  String pressure;
  String overlap;
  String speed;
  String fan;

  UUID follows;

  @Column(name = "made_by")
  UUID madeBy;

  @Column(name = "made_at")
  Instant madeAt;

  @Column(name = "retired_by")
  UUID retiredBy;

  @Column(name = "retired_at")
  Instant retiredAt;

  static GunCardEntity of(GunCard card) {
    GunCardEntity row = new GunCardEntity();
    row.id = card.id();
    row.workshop = card.workshop();
    row.name = card.name();
    row.distance = card.ranges().distance();
    row.pressure = card.ranges().pressure();
    row.overlap = card.ranges().overlap();
    row.speed = card.ranges().speed();
    row.fan = card.ranges().fan();
    row.follows = card.follows();
    row.madeBy = card.madeBy();
    row.madeAt = card.made();
    row.retiredBy = card.retiredBy();
    row.retiredAt = card.retired();
    return row;
  }

  GunCard asCard() {
    return new GunCard(
        id,
        workshop,
        name,
        new GunCard.Ranges(distance, pressure, overlap, speed, fan),
        follows,
        madeBy,
        madeAt,
        retiredBy,
        retiredAt);
  }
}
