package lapline.people;

import java.time.Instant;
import java.util.UUID;

/** A key a person made so that a program may act with exactly their rights. */
public record AccessToken(
    UUID id, UUID person, String name, Instant created, Instant lastUsed, Instant revoked) {

  public boolean good() {
    return revoked == null;
  }
}
