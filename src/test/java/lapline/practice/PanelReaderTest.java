package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class PanelReaderTest {
  private final PracticeShop shop = new PracticeShop();
  private final PracticeTask task = shop.tasks.find(PracticeShop.TASK).orElseThrow();

  private PanelReading read(Map<String, String> typed) {
    return PanelReader.read(task, shop.tasks.measurands(), typed, UnitSystem.METRIC);
  }

  private void isRefused(String key, Map<String, String> typed) {
    assertThat(read(typed).problems()).extracting(FieldProblem::key).containsExactly(key);
  }

  @Test
  void a_reading_carries_the_uncertainty_of_its_instrument() {
    Reading film = read(Map.of("film-after.at1", "62,0")).entry().of("film-after").get(0);
    assertThat(film.value()).isEqualTo(62e-6);
    assertThat(film.standardUncertainty()).isBetween(1.1e-6, 1.2e-6);
    assertThat(film.typed()).isEqualTo("62,0");
  }

  @Test
  void what_cannot_be_is_told_with_what_could() {
    isRefused("entry.reading.below-possible", Map.of("film-after.at1", "-3"));
    isRefused("entry.reading.above-possible", Map.of("fan-width", "2 m"));
    isRefused("entry.reading.wrong-unit", Map.of("fan-width", "20 psi"));
    isRefused("entry.reading.no-choice", Map.of("shine-left.at2", "perhaps"));
    isRefused("entry.no-such-place", Map.of("film-after.at3", "62"));
  }

  @Test
  void film_lost_by_painting_is_told_unless_the_gauge_may_have_scattered() {
    isRefused("entry.together.film", Map.of("film-before.at1", "120", "film-after.at1", "62"));
    assertThat(read(Map.of("film-before.at1", "62", "film-after.at1", "61")).problems()).isEmpty();
    assertThat(read(Map.of("film-before.at1", "120", "film-after.at2", "62")).problems()).isEmpty();
  }

  @Test
  void a_step_wider_than_the_fan_is_told() {
    isRefused(
        "entry.together.spacing", Map.of("fan-width", "200 mm", "pass-spacing.c1.p2", "260 mm"));
  }

  @Test
  void no_text_whatever_makes_it_throw() {
    long seed = 20310304;
    Random chance = new Random(seed);
    for (int i = 0; i < 3000; i++) {
      Map<String, String> typed = new TreeMap<>();
      typed.put("film-after.at1", scrawl(chance));
      typed.put("gun-pressure", scrawl(chance));
      typed.put("shine-left.at2", scrawl(chance));
      assertThat(read(typed)).as("seed " + seed + ", sample " + i).isNotNull();
    }
  }

  private static String scrawl(Random chance) {
    String letters = "0123456789.,-+ eE%/°µ:½ \tminpsaNfty∞";
    StringBuilder text = new StringBuilder();
    for (int i = chance.nextInt(12); i >= 0; i--) {
      text.append(letters.charAt(chance.nextInt(letters.length())));
    }
    return text.toString();
  }
}
