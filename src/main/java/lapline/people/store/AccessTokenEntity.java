package lapline.people.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import lapline.people.AccessToken;

/** The row of a key for a program. */
@Entity
@Table(name = "access_token")
class AccessTokenEntity {
  @Id UUID id;

  @Column(name = "person_id")
  UUID person;

  String name;
  String digest;

  @Column(name = "created_at")
  Instant createdAt;

  @Column(name = "last_used_at")
  Instant lastUsedAt;

  @Column(name = "revoked_at")
  Instant revokedAt;

  AccessToken asToken() {
    return new AccessToken(id, person, name, createdAt, lastUsedAt, revokedAt);
  }
}
