package lapline.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.TemporalAmount;

/** The clock of an invented story: it stands where the story is. */
public final class ScenarioClock extends Clock {
  private Instant now;

  public ScenarioClock(Instant start) {
    this.now = start;
  }

  void set(Instant to) {
    now = to;
  }

  /**
   * @param time a duration, or a period by the calendar of UTC
   */
  public void pass(TemporalAmount time) {
    now = now.atOffset(ZoneOffset.UTC).plus(time).toInstant();
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
    return Clock.fixed(now, zone);
  }
}
