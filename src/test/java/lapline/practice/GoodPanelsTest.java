package lapline.practice;

import static lapline.practice.GoodPanels.blended;
import static lapline.practice.GoodPanels.card;
import static lapline.practice.GoodPanels.masked;
import static lapline.practice.GoodPanels.prepared;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;

/** Under each task of the course good work, carefully measured, is accepted; one slip is not. */
class GoodPanelsTest {

  private static void isAccepted(WrittenPanel panel) {
    PanelScore score = panel.score();
    assertThat(score.standing()).isEmpty();
    assertThat(score.accepted()).isTrue();
    assertThat(score.practiceScore()).isGreaterThan(90);
  }

  private static void standsAt(WrittenPanel panel, String criterion) {
    PanelScore score = panel.score();
    assertThat(score.accepted()).isFalse();
    assertThat(score.standing()).containsExactly(criterion);
    assertThat(score.findings().get(0).id()).startsWith(criterion + ".");
  }

  @Test
  void a_panel_that_is_dull_everywhere_and_clean_is_accepted() {
    isAccepted(prepared());
    standsAt(prepared().put("shine-left.at4", "shine"), "shine");
    standsAt(prepared().put("edge-missed.at13", "missed"), "edges");
    standsAt(prepared().put("water-break", "breaks"), "water");
  }

  private static Verdict steps(String... papers) {
    WrittenPanel panel = prepared();
    IntStream.rangeClosed(1, 3).forEach(n -> panel.put("grit.s" + n, ""));
    IntStream.range(0, papers.length).forEach(n -> panel.put("grit.s" + (n + 1), papers[n]));
    return panel.score().results().stream()
        .filter(r -> r.criterion().id().equals("steps"))
        .findFirst()
        .orElseThrow()
        .verdict();
  }

  @Test
  void the_rule_of_two_hundred_numbers_is_the_lessons_own() {
    assertThat(steps("P240", "P400", "P600")).isEqualTo(Verdict.MET);
    assertThat(steps("P400", "P600", "P800")).isEqualTo(Verdict.MET);
    assertThat(steps("P600")).isEqualTo(Verdict.MET);
    assertThat(steps("P400", "P800")).isEqualTo(Verdict.MISSED);
    assertThat(steps("P240", "P600")).isEqualTo(Verdict.MISSED);
  }

  @Test
  void a_lid_with_nothing_missed_and_no_edge_is_accepted() {
    isAccepted(masked());
    standsAt(masked().put("apertures-missed", "1"), "apertures");
    standsAt(masked().put("bleed-length", "60 mm"), "bleed");
    standsAt(masked().put("hard-edge-length", "120 mm"), "soft");
  }

  @Test
  void a_card_that_three_coats_hide_is_accepted_by_eye_and_by_meter() {
    isAccepted(card());
    WrittenPanel metered = card();
    double[] black = {24, 36, 40.6};
    for (int coat = 1; coat <= 3; coat++) {
      metered.put("luminance-black.c" + coat, black[coat - 1] + " %");
      metered.put("luminance-white.c" + coat, "41 %");
    }
    isAccepted(metered);
    standsAt(card().put("squares-seen.c3", "3").put("squares-seen.c4", "1"), "hiding");
  }

  @Test
  void base_that_steps_out_and_leaves_room_is_accepted() {
    isAccepted(blended());
    standsAt(blended().put("step-out.c2", "0 mm").put("step-out.c3", "62 mm"), "order");
    standsAt(blended().put("step-out.c3", "75 mm"), "step");
    standsAt(blended().put("flash.c2", "4 min"), "flash");
    standsAt(
        blended()
            .put("step-out.c1", "45 mm")
            .put("step-out.c2", "80 mm")
            .put("step-out.c3", "143 mm"),
        "room");
  }
}
