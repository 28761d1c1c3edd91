package lapline.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
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
  private static final long SEED = "Harrowgate".hashCode();

  @Inject private DemoStages stages;
  @Inject private DemoDesk desk;

  /** Fills the records of people who have none yet, up to a moment. */
  public void live(List<Person> people, Instant now) {
    long began = System.nanoTime();
    desk.open(now, new Random(SEED));
    DemoStaff staff = DemoStaff.of(people);
    DemoSetUp setUp = new DemoSetUp(desk, staff.instructors().get(0));
    UUID gunCard = stages.call(() -> setUp.gunCards(now.minus(Duration.ofDays(700))));
    for (DemoPlan plan : DemoPlan.ALL) {
      Person learner = staff.apprentices().get(plan.number() - 1);
      UUID card = plan.number() % 2 == 0 ? gunCard : null;
      live(plan, new DemoLearner(desk, staff, plan, learner, card), now);
    }
    stages.run(() -> setUp.ownTarget(now.minus(Duration.ofHours(1))));
    LOG.info("Demo half year made in " + (System.nanoTime() - began) / 1_000_000 + " ms.");
  }

  private void live(DemoPlan plan, DemoLearner learner, Instant now) {
    List<Unit> units = desk.curriculum.units();
    int reached = Math.min(plan.panels().size(), units.size());
    for (int i = 0; i < reached; i++) {
      int unit = i;
      stages.run(() -> learner.study(unit, units.get(unit).id(), now));
    }
    String last = units.get(reached - 1).id();
    if (plan.ended() < 2) {
      stages.run(() -> learner.leaveDraft(last, now));
    }
    if (plan.number() == 14) {
      stages.run(() -> learner.suspend(last, now.minus(Duration.ofDays(5))));
    }
  }
}
