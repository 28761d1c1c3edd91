package lapline;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until a test turns it on. */
public final class TurnedClock extends Clock {
  private Instant now;

  public TurnedClock(Instant start) {
    now = start;
  }

  public void turn(Duration on) {
    now = now.plus(on);
  }

  public void turn(Period on) {
    now = now.atOffset(ZoneOffset.UTC).plus(on).toInstant();
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
