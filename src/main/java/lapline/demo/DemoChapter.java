package lapline.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * One apprentice in one unit: as much of the story as is written in one transaction, and that comes
 * out the same whether the chapters before it were told in this start or in one before.
 *
 * @param number of the unit in the course, from 0
 */
record DemoChapter(DemoPlan plan, int number, String unit) {
  private static final long SEED = "Harrowgate".hashCode();

  /**
   * The whole story, in the order in which it is told.
   *
   * @param units of the course, in its order
   */
  static List<DemoChapter> all(List<String> units) {
    List<DemoChapter> all = new ArrayList<>();
    for (DemoPlan plan : DemoPlan.ALL) {
      for (int i = 0; i < Math.min(plan.panels().size(), units.size()); i++) {
        all.add(new DemoChapter(plan, i, units.get(i)));
      }
    }
    return List.copyOf(all);
  }

  /** Chance of this chapter alone. */
  RandomGenerator chance() {
    return new SplittableRandom(SEED + 100L * plan.number() + number);
  }

  /** What the chapter's panels are submitted under; nobody can submit the same twice. */
  String submitKey(int panel) {
    return "demo " + unit + " " + panel;
  }

  boolean isSigned() {
    return number < plan.signedUnits();
  }

  /** Whether this is as far as the apprentice has come. */
  boolean isLatest() {
    return number == plan.panels().size() - 1;
  }

  /**
   * When a panel of this unit is wanted: units lie so that the last panel of the last one is done
   * when the plan says, and those that are behind leave time for their exam.
   *
   * @param number of the panel in this unit, from 0
   * @param now where the story ends
   */
  Instant panel(int number, Instant now) {
    int left = plan.panels().stream().skip(this.number).mapToInt(Integer::intValue).sum();
    Instant first = end(now).minus(plan.between().multipliedBy(left - 1L));
    Duration pace = isLatest() ? plan.between() : plan.between().multipliedBy(9).dividedBy(10);
    return first.plus(pace.multipliedBy(number));
  }

  private Instant end(Instant now) {
    return now.minus(Duration.ofDays(plan.ended())).minus(Duration.ofHours(2));
  }
}
