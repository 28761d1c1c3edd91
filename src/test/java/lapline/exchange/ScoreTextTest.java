package lapline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import lapline.pages.Messages;
import lapline.practice.WrittenPanel;
import lapline.practice.pages.CriterionWriter;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A program gets targets in the words a person reads, beside the numbers it computes with. */
class ScoreTextTest {
  private final CriterionWriter metric =
      CriterionWriter.of(new Messages(), UnitSystem.METRIC, WrittenPanel.COURSE);

  @Test
  void a_rule_is_kept_and_of_a_choice_the_good_one_is_named() {
    assertThat(target("clear/two-coats", "film-plan")).isEqualTo("kept");
    assertThat(target("preparing/flat-panel", "water-break")).isEqualTo("Holds");
  }

  /**
   * Five readings that scatter far more than the gauge errs: JCGM 100:2008, table G.2, has 2.87 for
   * 4 degrees of freedom (from memory).
   */
  @Test
  void of_few_readings_the_degrees_of_freedom_and_the_wider_interval_are_told() {
    var judged = text(scattered("mean")).criteria().stream().findFirst().orElseThrow();
    assertThat(judged.degreesOfFreedom()).isBetween(4.0, 4.3);
    assertThat(judged.expandedUncertainty() / judged.standardUncertainty())
        .isCloseTo(2.87, within(0.06));
    assertThat(judged.shown()).isEqualTo("60\u00a0±\u00a020\u00a0µm");
  }

  @Test
  void of_one_reading_the_uncertainty_is_taken_as_known() {
    var judged = text(scattered("each")).criteria().stream().findFirst().orElseThrow();
    assertThat(judged.degreesOfFreedom()).isNull();
    assertThat(judged.expandedUncertainty())
        .isCloseTo(2 * judged.standardUncertainty(), within(1e-15));
  }

  /** An arc or an early trigger: these places cannot tell; made by a computation. */
  @Test
  void a_change_that_is_not_decided_is_marked_as_such() {
    WrittenPanel film = WrittenPanel.under("clear/two-coats");
    double[] before = new double[15];
    Arrays.fill(before, 100);
    film.put("gun-pressure", "165 kPa").put("fan-width", "230 mm");
    film.putAtPlaces("film-before", before);
    film.putAtPlaces(
        "film-after",
        147.1,
        156.8,
        151.0,
        154.8,
        159.7,
        148.5,
        150.4,
        157.0,
        155.1,
        149.6,
        156.2,
        155.4,
        148.6,
        157.5,
        147.9);
    ScoreText.Cause first = text(film).findings().get(0);
    assertThat(first.rivals()).isNotEmpty();
    assertThat(first.decided()).isFalse();
    WrittenPanel lid = WrittenPanel.under("masking/hatch-lid-aperture");
    lid.put("apertures-missed", "2");
    assertThat(text(lid).findings().get(0).decided()).isTrue();
  }

  private static WrittenPanel scattered(String judged) {
    return WrittenPanel.against(
            "    - {id: it, label: It, quantity: film-build, target: 50 to 65 um, judged: %s,"
                    .formatted(judged)
                + " critical: yes, weight: 1, fade: 6 um, why: Invented., source: Invented.}")
        .putAtPlaces("film-before", 0, 0, 0, 0, 0)
        .putAtPlaces("film-after", 40, 80, 60, 50, 70);
  }

  /** No number stands for a choice, a rule or a count of nothing. */
  @Test
  void what_speaks_for_a_cause_is_said_as_on_the_page() {
    WrittenPanel lid = WrittenPanel.under("masking/hatch-lid-aperture");
    lid.put("apertures-missed", "2").put("slack-film", "slack");
    assertThat(text(lid).findings())
        .flatExtracting(ScoreText.Cause::evidence)
        .contains("Openings missed: 2, target none.", "Film tight: Slack, target Tight.")
        .noneMatch(said -> said.contains("at most 0"));
  }

  private ScoreText text(WrittenPanel panel) {
    return ScoreText.of(panel.task(), panel.score(), metric);
  }

  private String target(String task, String quantity) {
    WrittenPanel panel = WrittenPanel.under(task);
    var score = panel.score();
    String criterion =
        score.results().stream()
            .filter(r -> r.criterion().quantity().equals(quantity))
            .findFirst()
            .orElseThrow()
            .criterion()
            .id();
    return text(panel).criteria().stream()
        .filter(c -> c.criterion().equals(criterion))
        .findFirst()
        .orElseThrow()
        .target();
  }
}
