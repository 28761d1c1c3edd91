package lapline.signoff;

import java.time.Instant;
import java.util.UUID;

/**
 * The dated, expiring decision that a person may do an operation unsupervised.
 *
 * @param code opens the public page that tells whether it is good now
 */
public record SignOff(
    UUID id,
    UUID workshop,
    UUID person,
    String skill,
    String ruleVersion,
    String code,
    State state,
    UUID grantedBy,
    Instant granted,
    Instant expires) {

  /** What was last decided about it. */
  public enum State {
    GRANTED,
    SUSPENDED,
    WITHDRAWN
  }

  /** What it is worth at a moment. */
  public enum Standing {
    GOOD,
    SUSPENDED,
    WITHDRAWN,
    EXPIRED
  }

  public Standing at(Instant now) {
    return switch (state) {
      case SUSPENDED -> Standing.SUSPENDED;
      case WITHDRAWN -> Standing.WITHDRAWN;
      case GRANTED -> now.isBefore(expires) ? Standing.GOOD : Standing.EXPIRED;
    };
  }

  public SignOff in(State other) {
    return new SignOff(
        id, workshop, person, skill, ruleVersion, code, other, grantedBy, granted, expires);
  }
}
