package lapline.judgement.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a rule of panels takes, against what is known in closed form for a constant chance. */
class PanelRuleReferenceTest {

  private static double[] firstMet(PanelRule rule, List<Boolean> before, double p, int further) {
    double[] chances = new double[further];
    Arrays.fill(chances, p);
    return rule.firstMet(before, chances);
  }

  /**
   * Mean waiting time for a run of k: (1 − p^k)/((1 − p)p^k). Feller, An Introduction to
   * Probability Theory and Its Applications, vol. 1, XIII.7 (from memory); the figures besides by a
   * Markov chain of another program.
   */
  @ParameterizedTest
  @CsvSource({"3, 0.5, 14", "5, 0.5, 62", "3, 0.9, 3.7174", "5, 0.8, 10.2588"})
  void a_run_takes_as_many_panels_in_the_mean_as_feller_says(int k, double p, double printed) {
    double[] met = firstMet(new PanelRule(k, k), List.of(), p, 3000);
    double mean = 0;
    for (int i = 0; i < met.length; i++) {
      mean += (i + 1) * met[i];
    }
    double run = Math.pow(p, k);
    assertThat(mean).isCloseTo((1 - run) / ((1 - p) * run), within(1e-9));
    assertThat(mean).isCloseTo(printed, within(5.1e-5));
  }

  /** The chance of a run within so many tries, by another program's Markov chain. */
  @ParameterizedTest
  @CsvSource({
    "3, 10, 0.507812, 0.858591, 0.994837",
    "3, 20, 0.787028, 0.985582, 0.999989",
    "5, 10, 0.109375, 0.420175, 0.885735",
    "5, 20, 0.249870, 0.730795, 0.993289"
  })
  void a_run_comes_about_within_so_many_panels_as_another_program_finds(
      int k, int tries, double half, double seven, double nine) {
    PanelRule run = new PanelRule(k, k);
    assertThat(sum(run, 0.5, tries)).isCloseTo(half, within(5.1e-7));
    assertThat(sum(run, 0.7, tries)).isCloseTo(seven, within(5.1e-7));
    assertThat(sum(run, 0.9, tries)).isCloseTo(nine, within(5.1e-7));
  }

  /** The table at the head of curriculum/skills.yaml, where other lines than runs stand. */
  @ParameterizedTest
  @CsvSource({
    "4, 5, 10, 45, 85, 100",
    "5, 6, 10, 25, 67, 97",
    "5, 6, 20, 52, 94, 100",
    "5, 5, 10, 11, 42, 89"
  })
  void the_course_says_of_its_rules_what_they_are(
      int accepted, int ofLast, int tries, int half, int seven, int nine) {
    PanelRule rule = new PanelRule(accepted, ofLast);
    assertThat(Math.round(100 * sum(rule, 0.5, tries))).isEqualTo(half);
    assertThat(Math.round(100 * sum(rule, 0.7, tries))).isEqualTo(seven);
    assertThat(Math.round(100 * sum(rule, 0.9, tries))).isEqualTo(nine);
  }

  /** While the window holds all panels, the number tried is negative binomial (a textbook fact). */
  @ParameterizedTest
  @CsvSource({"1, 0.3", "2, 0.5", "3, 0.7", "5, 0.4"})
  void so_many_accepted_of_all_take_a_negative_binomial_number(int r, double p) {
    double[] met = firstMet(new PanelRule(r, PanelRule.MOST), List.of(), p, PanelRule.MOST);
    for (int n = 1; n <= met.length; n++) {
      double exact = choose(n - 1, r - 1) * Math.pow(p, r) * Math.pow(1 - p, n - r);
      assertThat(met[n - 1]).as("%s panels", n).isCloseTo(n < r ? 0 : exact, within(1e-12));
    }
  }

  private static double choose(int n, int k) {
    double c = 1;
    for (int i = 1; i <= k; i++) {
      c *= (n - k + i) / (double) i;
    }
    return c;
  }

  private static double sum(PanelRule rule, double p, int tries) {
    return Arrays.stream(firstMet(rule, List.of(), p, tries)).sum();
  }

  @Test
  void panels_done_before_count_as_far_as_they_are_among_the_last() {
    PanelRule rule = new PanelRule(2, 3);
    assertThat(firstMet(rule, List.of(true, false), 1, 2)).containsExactly(1, 0);
    assertThat(firstMet(rule, List.of(true, false, false), 1, 2)).containsExactly(0, 1);
    assertThat(rule.isMetBy(List.of(false, true, false, true))).isTrue();
    assertThat(rule.isMetBy(List.of(true, true, false, false))).isFalse();
    assertThat(rule.isMetBy(List.of())).isFalse();
  }

  @Test
  void a_chance_that_changes_is_taken_panel_by_panel() {
    double[] met = new PanelRule(2, 2).firstMet(List.of(), new double[] {1, 0, 1, 0.25});
    assertThat(met).containsExactly(0, 0, 0, 0.25);
  }

  @Test
  void what_is_no_rule_no_chance_or_met_already_is_refused_with_its_value() {
    refused(() -> new PanelRule(0, 3), "accepted is 0");
    refused(() -> new PanelRule(4, 3), "accepted is 4");
    refused(() -> new PanelRule(1, 0), "ofLast is 0");
    refused(() -> new PanelRule(1, PanelRule.MOST + 1), "ofLast is 13");
    for (double bad : new double[] {-0.1, 1.1, Double.NaN, Double.POSITIVE_INFINITY}) {
      refused(() -> firstMet(new PanelRule(1, 2), List.of(), bad, 3), "chances has " + bad);
    }
    refused(() -> firstMet(new PanelRule(1, 2), List.of(true), 0.5, 3), "not be met yet");
  }

  private static void refused(Runnable call, String says) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessageContaining(says);
  }
}
