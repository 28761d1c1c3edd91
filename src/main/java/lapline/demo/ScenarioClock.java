package lapline.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The clock of the invented past: it stands where the story is. */
final class ScenarioClock extends Clock {
  private Instant now;

  ScenarioClock(Instant start) {
    this.now = start;
  }

  void set(Instant to) {
    now = to;
  }

  void pass(Duration time) {
    now = now.plus(time);
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
