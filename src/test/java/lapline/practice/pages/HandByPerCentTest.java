package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import lapline.pages.Messages;
import lapline.practice.PanelScore;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Half, all and one and a half of what an apprentice wrote down about the hand. */
class HandByPerCentTest {
  private static final String MORE = "critical: yes, judged: mean, weight: 1, fade: 1 in";

  private static WrittenPanel panel() {
    return WrittenPanel.against(
        WrittenPanel.criterion("distance", "distance-mean", "4 to 6 in", MORE),
        WrittenPanel.criterion("speed", "stroke-speed", "12 to 20 in/s", MORE + "/s"));
  }

  private static Map<String, List<String>> of(WrittenPanel panel, UnitSystem units) {
    PanelScore score = panel.score();
    return new HandByPerCent(score, new PhraseWriter(new Messages(), units)).from(50, 150);
  }

  @Test
  void a_distance_is_told_with_its_uncertainty_in_the_readers_units() {
    WrittenPanel panel = panel().put("distance-middle.c1.p1", "150");
    List<String> metric = of(panel, UnitSystem.METRIC).get("distance");
    assertThat(metric).hasSize(101);
    // read to 5 mm, doubled
    assertThat(metric.get(50)).isEqualTo("150\u00a0±\u00a010\u00a0mm");
    assertThat(metric.get(0)).isEqualTo("75\u00a0±\u00a05\u00a0mm");
    assertThat(of(panel, UnitSystem.US).get("distance").get(50)).endsWith("in").startsWith("5.9");
  }

  @Test
  void a_speed_follows_from_the_times_of_the_strokes() {
    WrittenPanel panel = panel().put("stroke-time.c1.p1", "1.5 s");
    // 600 mm in 1.5 s are 400 mm/s
    assertThat(of(panel, UnitSystem.METRIC).get("speed").get(100)).startsWith("600\u00a0±");
  }

  @Test
  void what_nobody_wrote_down_is_not_told() {
    assertThat(of(panel().put("distance-middle.c1.p1", "150"), UnitSystem.METRIC))
        .containsOnlyKeys("distance");
  }
}
