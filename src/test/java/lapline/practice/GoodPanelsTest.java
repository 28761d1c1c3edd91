package lapline.practice;

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

  private static WrittenPanel prepared() {
    WrittenPanel panel = WrittenPanel.under("preparing/flat-panel");
    IntStream.rangeClosed(1, 14).forEach(n -> panel.put("shine-left.at" + n, "dull"));
    IntStream.of(1, 2, 3, 4, 5, 6, 7, 8, 13, 14)
        .forEach(n -> panel.put("edge-missed.at" + n, "done"));
    IntStream.rangeClosed(1, 14).forEach(n -> panel.put("dust-left.at" + n, "clean"));
    panel.put("grit.s1", "P240").put("grit.s2", "P400").put("grit.s3", "P600");
    return panel.put("water-break", "holds").put("work-time", "38 min");
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

  private static WrittenPanel masked() {
    WrittenPanel panel = WrittenPanel.under("masking/hatch-lid-aperture");
    IntStream.rangeClosed(1, 8).forEach(n -> panel.put("jamb-overhang.at" + n, 23 + n % 4 + " mm"));
    panel.put("slack-film", "tight").put("tape-used", "6.5 m").put("work-time", "31 min");
    return panel.put("apertures-missed", "0").put("bleed-length", "0").put("hard-edge-length", "0");
  }

  @Test
  void a_lid_with_nothing_missed_and_no_edge_is_accepted() {
    isAccepted(masked());
    standsAt(masked().put("apertures-missed", "1"), "apertures");
    standsAt(masked().put("bleed-length", "60 mm"), "bleed");
    standsAt(masked().put("hard-edge-length", "120 mm"), "soft");
  }

  private static WrittenPanel sprayedAt20Psi(String task) {
    WrittenPanel panel = WrittenPanel.under(task);
    panel.put("tip-size", "1.2 mm").put("fluid-turns", "2.5").put("gun-pressure", "20 psi");
    panel.put("fan-width", "9 in").put("mix-amount.s1", "200 ml").put("mix-amount.s2", "100 ml");
    panel.put("stroke-length", "600 mm");
    for (int coat = 1; coat <= 3; coat++) {
      for (int pass = 1; pass <= 3; pass++) {
        String at = ".c" + coat + ".p" + pass;
        panel.put("distance-start" + at, "5 in").put("distance-middle" + at, "4.8 in");
        panel.put("distance-end" + at, "5.1 in").put("stroke-time" + at, "1.5 s");
        if (pass > 1) {
          panel.put("pass-spacing" + at, "2.7 in");
        }
      }
    }
    return panel.put("flash.c2", "10 min").put("flash.c3", "11 min");
  }

  private static WrittenPanel card() {
    WrittenPanel panel = sprayedAt20Psi("coverage/spray-out-card");
    return panel
        .put("squares-seen.c1", "20")
        .put("squares-seen.c2", "6")
        .put("squares-seen.c3", "0");
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

  private static WrittenPanel blended() {
    WrittenPanel panel = sprayedAt20Psi("coverage/base-over-spot");
    panel.put("air-temperature", "21").put("panel-temperature", "20").put("humidity", "55");
    for (int place = 1; place <= 4; place++) {
      panel.put("film-before.at" + place, 95 + place + " um");
      panel.put("film-after.at" + place, 114 + place + place % 2 + " um");
    }
    panel.put("room-left.c3", "55 mm");
    return panel.put("step-out.c1", "5 mm").put("step-out.c2", "32 mm").put("step-out.c3", "95 mm");
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
