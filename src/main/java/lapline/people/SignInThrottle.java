package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Slows down guessing: after five wrong passwords for a name, or thirty from one address, the next
 * tries wait a quarter of an hour. Kept in memory; a restart forgives.
 */
@ApplicationScoped
public class SignInThrottle {
  static final int TRIES_PER_NAME = 5;
  static final int TRIES_PER_ADDRESS = 30;
  static final Duration WINDOW = Duration.ofMinutes(15);
  private static final int MOST_KEPT = 10_000;

  private record Tries(int wrong, Instant since) {}

  private final Map<String, Tries> tries =
      new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Tries> eldest) {
          return size() > MOST_KEPT;
        }
      };
  private Clock clock;

  protected SignInThrottle() {}

  @Inject
  public SignInThrottle(Clock clock) {
    this.clock = clock;
  }

  /** Whether this name from this address may try now. */
  public synchronized boolean open(String name, String address) {
    return wrong("n:" + name) < TRIES_PER_NAME && wrong("a:" + address) < TRIES_PER_ADDRESS;
  }

  public synchronized void wrongPassword(String name, String address) {
    count("n:" + name);
    count("a:" + address);
  }

  public synchronized void rightPassword(String name) {
    tries.remove("n:" + name);
  }

  private int wrong(String key) {
    Tries t = tries.get(key);
    return t == null || t.since().plus(WINDOW).isBefore(clock.instant()) ? 0 : t.wrong();
  }

  private void count(String key) {
    int before = wrong(key);
    Instant since = before == 0 ? clock.instant() : tries.get(key).since();
    tries.put(key, new Tries(before + 1, since));
  }
}
