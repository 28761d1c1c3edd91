package lapline.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.random.RandomGenerator;

/**
 * Finds the moments of an invented story: in the hours of the shop, and none later than now.
 *
 * @param now where the story ends
 */
record DemoDays(ShopHours hours, Instant now) {
  /** From the task sheet to the score. */
  private static final Duration A_PANEL = Duration.ofHours(2);

  /** So long a panel waits for an instructor. */
  private static final Duration BENCH = Duration.ofDays(3);

  /** An exam, another two days later where it was failed, and its marking. */
  private static final Duration EXAMS = Duration.ofHours(51);

  /** When a panel is begun that was wanted at a moment, so that it is scored by now. */
  Instant panel(Instant wanted, RandomGenerator chance) {
    Instant latest = now.minus(A_PANEL);
    Instant open = hours.next(wanted, chance);
    return open.isAfter(latest) ? hours.last(latest) : open;
  }

  /** When somebody sits down for an exam. */
  Instant exam(Instant wanted) {
    Instant latest = now.minus(EXAMS);
    return wanted.isAfter(latest) ? latest : wanted;
  }

  /** When the panel was begun that is half written down now; after one that ended so lately. */
  Instant draft(Instant after) {
    Instant begun = hours.last(now.minus(Duration.ofMinutes(25)));
    return begun.isAfter(after) ? begun : after.plus(Duration.ofMinutes(10));
  }

  /** Whether a panel finished then has not come to the bench yet. */
  boolean waitsForTheBench(Instant finished) {
    return finished.isAfter(now.minus(BENCH));
  }
}
