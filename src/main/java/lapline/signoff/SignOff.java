package lapline.signoff;

import java.time.Duration;
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

  /** A sign-off may be renewed this long before it ends, so that nobody falls out of work. */
  public static final Duration RENEWABLE_BEFORE = Duration.ofDays(60);

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

  /** Whether nothing is to be decided yet: good, and not so near its end that it may be renewed. */
  public boolean settledAt(Instant now) {
    return at(now) == Standing.GOOD && now.isBefore(expires.minus(RENEWABLE_BEFORE));
  }

  public SignOff in(State other) {
    return new SignOff(
        id, workshop, person, skill, ruleVersion, code, other, grantedBy, granted, expires);
  }
}
