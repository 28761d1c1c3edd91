package lapline.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.logging.Logger;
import lapline.lessons.Unit;
import lapline.people.Person;

/**
 * Half a year in the demo workshop. Every panel is written down and scored by the code that real
 * panels go through; only the hands are invented, by chance from a fixed seed.
 */
@ApplicationScoped
public class DemoScenario {
  private static final Logger LOG = Logger.getLogger("lapline.demo");

  @Inject private DemoStages stages;
  @Inject private DemoDesk desk;

  /** Tells up to a moment what no earlier start has told; a start may be cut short anywhere. */
  public void live(List<Person> people, Instant now) {
    DemoStaff staff = DemoStaff.of(people);
    List<String> units = desk.curriculum.units().stream().map(Unit::id).toList();
    List<DemoChapter> left =
        DemoChapter.all(units).stream().filter(c -> !isTold(c, staff)).toList();
    if (!left.isEmpty()) {
      tell(left, staff, now);
    }
  }

  private boolean isTold(DemoChapter chapter, DemoStaff staff) {
    UUID learner = staff.apprentice(chapter.plan().number()).id();
    return desk.attempts.bySubmitKey(learner, chapter.submitKey(1)).isPresent();
  }

  private void tell(List<DemoChapter> left, DemoStaff staff, Instant now) {
    long began = System.nanoTime();
    desk.open(now, left.get(0).chance());
    DemoSetUp setUp = new DemoSetUp(desk, staff.instructors().get(0));
    UUID gunCard = stages.call(() -> setUp.gunCard(now.minus(Duration.ofDays(700))));
    for (DemoChapter chapter : left) {
      desk.open(now, chapter.chance());
      var learner = new DemoLearner(desk, staff, chapter, gunCard, now);
      boolean end = chapter.equals(left.get(left.size() - 1));
      stages.run(
          () -> {
            learner.study();
            if (end) {
              setUp.ownTarget(now.minus(Duration.ofHours(1)));
            }
          });
    }
    LOG.info("Demo half year made in " + (System.nanoTime() - began) / 1_000_000 + " ms.");
  }
}
