package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.practice.Phrase.End;
import org.junit.jupiter.api.Test;

/** The task's own words for what came out low or high, and what a doubt leaves to be said. */
class TaskFindingsTest {
  private static final String PRESSURE =
      criterion(
          "pressure", "gun-pressure", "150 to 180 kPa", "critical: yes, weight: 1, fade: 9 kPa");
  private static final String FAN =
      criterion("pressure-fan", "fan-turns", "2 to 3", "weight: 1, fade: 0.5");

  private static WrittenPanel with(String... rules) {
    return WrittenPanel.withFindings(String.join("\n", rules), PRESSURE, FAN);
  }

  private static String rule(String side, String more, String cause) {
    return "  - {criterion: pressure, side: %s, %scause: %s, change: Change it.}"
        .formatted(side, more, cause);
  }

  private static List<Finding> of(WrittenPanel panel, String pressure) {
    panel.put("gun-pressure", pressure);
    return TaskFindings.of(panel.task(), panel.score().results());
  }

  @Test
  void far_outside_means_more_than_so_far_on_either_side() {
    WrittenPanel panel = with(rule("any", "beyond: 100 kPa, ", "Wrong scale."));
    assertThat(of(panel, "280 kPa")).as("just so far").isEmpty();
    assertThat(of(panel, "281 kPa")).extracting(Finding::id).containsExactly("pressure.high");
    assertThat(of(panel, "49 kPa")).extracting(Finding::id).containsExactly("pressure.low");
  }

  @Test
  void the_first_rule_that_fits_is_taken_alone() {
    WrittenPanel panel = with(rule("high", "", "First."), rule("any", "", "Second."));
    assertThat(of(panel, "250 kPa")).extracting(f -> f.cause().text()).containsExactly("First.");
    assertThat(of(panel, "100 kPa")).extracting(f -> f.cause().text()).containsExactly("Second.");
  }

  @Test
  void several_rivals_share_half_of_the_weight_and_have_names_of_their_own() {
    Finding found =
        of(with(rule("low", "rivals: [A bad gauge., A long hose.], ", "Low.")), "100 kPa").get(0);
    assertThat(found.support()).isGreaterThan(0.9);
    assertThat(found.rivals())
        .extracting(PanelScore.Rival::id)
        .containsExactly("pressure.low.1", "pressure.low.2");
    assertThat(found.rivals())
        .allSatisfy(r -> assertThat(r.support()).isCloseTo(found.support() / 4, within(1e-12)));
  }

  @Test
  void a_doubt_says_whose_it_is_how_large_and_what_was_read() {
    WrittenPanel panel = with(rule("any", "", "Off."));
    Finding doubt = of(panel, "181 kPa").get(0);
    Result pressure = panel.score().result("pressure").orElseThrow();
    assertThat(doubt.id()).isEqualTo("pressure.doubt");
    assertThat(doubt.support()).isEqualTo(1 - pressure.conformance()).isBetween(0.05, 0.95);
    assertThat(doubt.cause().args()).extracting(Phrase.Arg::word).containsExactly("A pressure");
    List<Phrase.Arg> read = doubt.evidence().get(0).args();
    assertThat(read.get(1).value()).isEqualTo(181e3);
    assertThat(read.get(2).end()).isEqualTo(End.MOST);
    assertThat(of(panel, "149 kPa").get(0).evidence().get(0).args().get(2).end())
        .isEqualTo(End.LEAST);
  }

  /** Nothing was read, so there is nothing to be in doubt about. */
  @Test
  void what_was_not_judged_has_neither_cause_nor_doubt() {
    WrittenPanel panel = with(rule("any", "", "Off."));
    assertThat(panel.score().results()).hasSize(2).noneMatch(Result::judged);
    assertThat(TaskFindings.of(panel.task(), panel.score().results())).isEmpty();
  }

  @Test
  void a_cause_belongs_to_its_criterion_and_not_to_one_whose_name_begins_alike() {
    WrittenPanel panel = with(rule("any", "", "Off.")).put("fan-turns", "9");
    Finding cause = of(panel, "250 kPa").get(0);
    assertThat(panel.score().results())
        .filteredOn(cause::isAbout)
        .extracting(r -> r.criterion().id())
        .containsExactly("pressure");
    Finding fan =
        TaskFindings.of(
                WrittenPanel.withFindings(
                        "  - {criterion: pressure-fan, side: any, cause: Off., change: Close it.}",
                        PRESSURE,
                        FAN)
                    .task(),
                panel.score().results())
            .get(0);
    assertThat(panel.score().results())
        .filteredOn(fan::isAbout)
        .extracting(r -> r.criterion().id())
        .containsExactly("pressure-fan");
  }
}
