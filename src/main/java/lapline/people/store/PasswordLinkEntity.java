package lapline.people.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** The row of a link that lets one person choose a password once. */
@Entity
@Table(name = "password_link")
class PasswordLinkEntity {
  @Id String digest;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "expires_at")
  Instant expiresAt;

  @Column(name = "used_at")
  Instant usedAt;
}
