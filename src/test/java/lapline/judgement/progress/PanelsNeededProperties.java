package lapline.judgement.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/**
 * How often what is foretold comes true in simulated workshops: of learners as the model has them,
 * and of such as it does not.
 */
class PanelsNeededProperties {
  private static final PanelRule RULE = new PanelRule(5, 6);
  private static final int SHOPS = 80;
  private static final int LEARNERS = 12;
  private static final int LONGEST = 120;

  /** The chance that a learner's panel of this number is accepted. */
  private interface Hand {
    double chance(int panel);
  }

  private static double normal(RandomGenerator chance) {
    return chance.nextGaussian();
  }

  @Test
  void of_learners_as_the_model_has_them_the_interval_holds_what_it_says() {
    Share held =
        share(
            chance -> {
              LearningCurve curve =
                  new LearningCurve(-1 + 1.5 * normal(chance), Math.abs(normal(chance)));
              return curve::chance;
            });
    assertThat(held.all).isGreaterThan(200);
    assertThat(held.share()).as("share held").isBetween(0.76, 0.88);
  }

  /** Everybody learns by an exponential, up to a share that stays below all. */
  @Test
  void of_learners_who_stop_improving_it_holds_nearly_as_much() {
    Share held =
        share(
            chance -> {
              double top = 0.7 + 0.25 * chance.nextDouble();
              double slow = 2 + 6 * chance.nextDouble();
              return panel -> top * (1 - 0.9 * Math.exp(-(panel - 1) / slow));
            });
    assertThat(held.all).isGreaterThan(200);
    assertThat(held.share()).as("share held").isBetween(0.75, 0.97);
  }

  /** Good and bad days: the odds go up and down by half a unit beside what was learnt. */
  @Test
  void of_learners_with_good_and_bad_days_too() {
    Share held =
        share(
            chance -> {
              double start = -1.5 + normal(chance);
              double gain = 0.5 + 0.5 * chance.nextDouble();
              return panel -> {
                double odds = start + gain * Math.log(panel) + 0.5 * normal(chance);
                return 1 / (1 + Math.exp(-odds));
              };
            });
    assertThat(held.all).isGreaterThan(200);
    assertThat(held.share()).as("share held").isBetween(0.75, 0.97);
  }

  private static final class Share {
    int held;
    int all;

    double share() {
      return (double) held / all;
    }
  }

  private static Share share(Function<RandomGenerator, Hand> hands) {
    Share share = new Share();
    for (int shop = 1; shop <= SHOPS; shop++) {
      RandomGenerator chance = new Random(shop);
      List<List<Boolean>> panels = new ArrayList<>();
      for (int i = 0; i < LEARNERS; i++) {
        panels.add(learn(hands.apply(chance), chance));
      }
      for (List<Boolean> own : panels) {
        count(own, panels.stream().filter(p -> p != own).toList(), chance, share);
      }
    }
    return share;
  }

  /** Panels until the rule is met, or as many as anybody would ever do. */
  private static List<Boolean> learn(Hand hand, RandomGenerator chance) {
    List<Boolean> panels = new ArrayList<>();
    while (!RULE.isMetBy(panels) && panels.size() < LONGEST) {
      panels.add(chance.nextDouble() < hand.chance(panels.size() + 1));
    }
    return panels;
  }

  /**
   * One forecast of each learner, after a number of panels that knows nothing of what is to come.
   */
  private static void count(
      List<Boolean> own, List<List<Boolean>> others, RandomGenerator chance, Share share) {
    int done = chance.nextInt(PanelsNeeded.FEWEST, 10);
    if (done >= own.size()) {
      return;
    }
    Optional<PanelsNeeded> told =
        PanelsNeeded.of(LearnerBelief.usual().among(others), RULE, own.subList(0, done), done);
    if (told.filter(PanelsNeeded::hasEnds).isPresent()) {
      int needed = own.size() - done;
      share.all++;
      boolean held = needed >= told.get().least() && needed <= told.get().most().getAsInt();
      share.held += held ? 1 : 0;
    }
  }
}
