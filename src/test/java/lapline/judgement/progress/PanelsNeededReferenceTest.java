package lapline.judgement.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is foretold from a person's panels, against closed forms where there are some. */
class PanelsNeededReferenceTest {
  private static final PanelRule ONE = new PanelRule(1, 1);
  private static final PanelRule FIVE_OF_SIX = new PanelRule(5, 6);

  /** Every chance of a steady hand equally likely: the odds' logarithm is logistic then. */
  private static LearnerBelief anySteadyHand() {
    List<LearningCurve> curves = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (double start = -16; start <= 16; start += 0.02) {
      double p = new LearningCurve(start, 0).chance(1);
      curves.add(new LearningCurve(start, 0));
      weights.add(p * (1 - p));
    }
    return LearnerBelief.of(curves, weights.stream().mapToDouble(w -> w).toArray());
  }

  /**
   * With every chance equally likely before, the next panel is accepted with (s + 1)/(n + 2):
   * Laplace's rule of succession; and the first accepted one comes after so many more by the
   * beta-binomial B(s + 2, f + k)/B(s + 1, f + 1) (textbook facts). Here s is 0.
   */
  @ParameterizedTest
  @CsvSource({"1", "3", "8"})
  void a_steady_hand_is_foretold_as_laplace_did(int missed) {
    List<Boolean> panels = Collections.nCopies(missed, false);
    double[] met = anySteadyHand().after(panels).firstMet(ONE, panels, 6);
    double notYet = 1;
    for (int k = 1; k <= met.length; k++) {
      double chance = 1.0 / (missed + k - 1 + 2);
      assertThat(met[k - 1]).as("panel %s", k).isCloseTo(notYet * chance, within(1e-6));
      notYet *= 1 - chance;
    }
  }

  @Test
  void accepted_panels_count_as_laplace_counts_them() {
    List<Boolean> panels = List.of(true, false, true, true, false);
    double[] met = anySteadyHand().after(panels).firstMet(ONE, panels, 1);
    assertThat(met[0]).isCloseTo(4 / 7.0, within(1e-6));
  }

  /** The odds follow the power law: with gain 2 the tenth panel has a hundred times the first's. */
  @Test
  void the_odds_grow_with_a_power_of_the_number_of_panels() {
    LearningCurve curve = new LearningCurve(Math.log(0.1), 2);
    assertThat(curve.chance(1)).isCloseTo(1 / 11.0, within(1e-12));
    assertThat(curve.chance(10)).isCloseTo(10 / 11.0, within(1e-12));
  }

  @Test
  void the_interval_holds_four_fifths_and_its_middle_lies_inside() {
    List<Boolean> panels = List.of(false, true, false, true, true, true);
    PanelsNeeded needed = needed(panels).orElseThrow();
    double[] met = LearnerBelief.usual().after(panels).firstMet(FIVE_OF_SIX, panels, 30);
    double held = 0;
    for (int k = needed.least(); k <= needed.most().getAsInt(); k++) {
      held += met[k - 1];
    }
    assertThat(held).isBetween(0.8, 0.95).isCloseTo(needed.held(), within(1e-12));
    assertThat(needed.middle().getAsInt()).isBetween(needed.least(), needed.most().getAsInt());
    assertThat(needed.least()).isLessThan(needed.most().getAsInt());
  }

  @Test
  void who_does_better_is_told_fewer_panels() {
    int good = middle(List.of(true, false, true, true));
    int poor = middle(List.of(false, true, false, true));
    assertThat(good).isLessThan(poor);
  }

  @Test
  void quick_learners_beside_them_shorten_what_is_foretold_of_somebody_new() {
    List<Boolean> panels = List.of(false, false, true);
    List<List<Boolean>> quick =
        Collections.nCopies(12, List.of(false, false, true, true, true, true, true, true));
    List<List<Boolean>> slow =
        Collections.nCopies(12, List.of(false, true, false, false, true, false, true, false));
    LearnerBelief usual = LearnerBelief.usual();
    double among = usual.among(quick).after(panels).firstMet(FIVE_OF_SIX, panels, 6)[4];
    double others = usual.among(slow).after(panels).firstMet(FIVE_OF_SIX, panels, 6)[4];
    assertThat(among).isGreaterThan(2 * others);
    assertThat(usual.among(List.of()).firstMet(ONE, List.of(), 4))
        .containsExactly(usual.firstMet(ONE, List.of(), 4), within(1e-12));
  }

  private static int middle(List<Boolean> panels) {
    return needed(panels).orElseThrow().middle().getAsInt();
  }

  private static Optional<PanelsNeeded> needed(List<Boolean> panels) {
    return PanelsNeeded.of(LearnerBelief.usual(), FIVE_OF_SIX, panels, panels.size());
  }

  @Test
  void panels_too_old_to_count_still_say_how_somebody_learns() {
    List<Boolean> good = Collections.nCopies(6, true);
    LearnerBelief usual = LearnerBelief.usual();
    PanelsNeeded anew = PanelsNeeded.of(usual, FIVE_OF_SIX, good, 0).orElseThrow();
    assertThat(anew.least()).isEqualTo(5);
    assertThat(anew.most().getAsInt()).isLessThan(9);
    assertThat(PanelsNeeded.of(usual, FIVE_OF_SIX, good, 4).orElseThrow().least()).isOne();
    refused(() -> PanelsNeeded.of(usual, FIVE_OF_SIX, good, -1), "young is -1");
    refused(() -> PanelsNeeded.of(usual, FIVE_OF_SIX, good, 7), "young is 7");
  }

  @Test
  void too_few_panels_or_a_rule_that_is_met_are_not_foretold() {
    assertThat(needed(List.of(true, true))).isEmpty();
    assertThat(needed(List.of(true, true, true, true, true))).isEmpty();
  }

  @Test
  void what_is_far_off_has_no_upper_end() {
    PanelsNeeded needed = needed(Collections.nCopies(12, false)).orElseThrow();
    assertThat(needed.hasEnds()).isFalse();
    assertThat(needed.least()).isBetween(5, PanelsNeeded.FURTHEST + 1);
    assertThat(needed.held()).isBetween(0.8, 0.95);
  }

  @Test
  void what_is_no_curve_and_no_belief_is_refused_with_its_value() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -Double.MAX_VALUE * 2}) {
      refused(() -> new LearningCurve(bad, 1), "start is " + bad);
      refused(() -> new LearningCurve(0, bad), "gain is " + bad);
    }
    refused(() -> new LearningCurve(0, -0.1), "gain is -0.1");
    refused(() -> new LearningCurve(0, 0).chance(0), "panel is 0");
    List<LearningCurve> one = List.of(new LearningCurve(0, 0));
    refused(() -> LearnerBelief.of(one), "1 curves");
    refused(() -> LearnerBelief.of(one, 1, 1), "[1.0, 1.0]");
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      refused(() -> LearnerBelief.of(one, bad), "[" + bad + "]");
    }
  }

  private static void refused(Runnable call, String says) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessageContaining(says);
  }
}
