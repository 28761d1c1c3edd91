package lapline.content.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The inch of 25.4 mm, the US fluid ounce of 29.57 mL and °F = 1.8 °C + 32: NIST SP 811:2008. */
class BothUnitsCheckTest {
  private static List<Problem> problems(String text) {
    Problems problems = new Problems("a/lesson.md");
    BothUnitsCheck.check(text, problems);
    return problems.all();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{25 mm | 1 in}",
        "{50 to 75 mm | 2 to 3 in}",
        "{300 − 125 = 175 mm | 12 − 5 = 7 in}",
        "{480, 120 and 120 ml | 16, 4 and 4 fl oz}",
        "{17 + 3 = 20 °C | 62 + 5.4 = 67.4 °F}",
        "{20 °C | 68 °F}",
        "{10 °C | 18 °F}",
        "{1 °C | 2 °F}",
        "{60 µm | 2.4 mil}",
        "{140 kPa | 20 psi}",
        "{38 mm | 1½ in}",
        "no braces at all",
      })
  void one_quantity_in_both_systems_is_taken(String text) {
    assertThat(problems(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{25 mm | 2 in}",
        "{1 in | 25 mm}",
        "{25 mm | 1 mil}",
        "{25 mm | 2.5 cm}",
        "{50 to 75 mm | 2 in}",
        "{300 − 125 = 175 mm | 12 − 5 = 8 in}",
        "{20 °C | 70 °F}",
        "{10 °C | 20 °F}",
        "{100 ml | 1 fl oz}",
        "{a hand | a foot}",
        "{25 mm}",
        "{25 mm | 1 in",
        "{25 | 1}",
      })
  void anything_else_is_told(String text) {
    assertThat(problems(text)).isNotEmpty();
  }

  @Test
  void the_line_is_told() {
    assertThat(problems("fine\n{25 mm | 1 in}\nso {25 mm | 3 in} is not\n"))
        .singleElement()
        .hasToString(
            "a/lesson.md:3: '25 mm' and '3 in' are not the same quantity;"
                + " give one quantity in both systems, like {25 mm | 1 in}");
  }

  @Test
  void each_reads_a_side_of_their_own_and_other_places_stay() {
    String text = "{wet} and {50 to 75 mm | 2 to 3 in}, {2 m | 6 ft}";
    assertThat(BothUnits.in(text, UnitSystem.METRIC)).isEqualTo("{wet} and 50 to 75 mm, 2 m");
    assertThat(BothUnits.in(text, UnitSystem.US)).isEqualTo("{wet} and 2 to 3 in, 6 ft");
  }
}
