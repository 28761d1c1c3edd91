package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class TargetTextTest {
  private static final double PSI = 6894.757;

  private static void isRange(
      String text, Dimension dimension, UnitSystem assumed, double least, double most) {
    TargetRange range = TargetText.read(text, dimension, assumed).orElseThrow();
    assertThat(range.least()).as(text).isCloseTo(least, within(1e-6 * Math.abs(least) + 1e-12));
    assertThat(range.most()).as(text).isCloseTo(most, within(1e-6 * Math.abs(most) + 1e-12));
  }

  @Test
  void a_range_names_its_unit_once_or_twice() {
    isRange("3 to 5 in", Dimension.LENGTH, UnitSystem.METRIC, 0.0762, 0.127);
    isRange("3 in to 5", Dimension.LENGTH, UnitSystem.METRIC, 0.0762, 0.127);
    isRange("75 mm to 5 in", Dimension.LENGTH, UnitSystem.METRIC, 0.075, 0.127);
    isRange("50–65 µm", Dimension.FILM, UnitSystem.US, 50e-6, 65e-6);
    isRange("-8 % to 8 %", Dimension.SHARE, UnitSystem.METRIC, -0.08, 0.08);
  }

  @Test
  void a_middle_with_what_it_may_stray_is_a_range() {
    isRange("24 psi ± 1", Dimension.PRESSURE, UnitSystem.METRIC, 23 * PSI, 25 * PSI);
    isRange("24 ± 1 psi", Dimension.PRESSURE, UnitSystem.METRIC, 23 * PSI, 25 * PSI);
    isRange("24 +/- 1", Dimension.PRESSURE, UnitSystem.US, 23 * PSI, 25 * PSI);
    isRange("68 °F ± 9 °F", Dimension.TEMPERATURE, UnitSystem.METRIC, 15, 25);
  }

  @Test
  void one_limit_leaves_the_other_end_open() {
    isRange(
        "at least 3 °C",
        Dimension.TEMPERATURE_DIFFERENCE,
        UnitSystem.METRIC,
        3,
        Double.POSITIVE_INFINITY);
    assertThat(TargetText.read("at most 0 mm", Dimension.LENGTH, UnitSystem.METRIC))
        .contains(TargetRange.atMost(0));
  }

  @Test
  void the_hyphen_of_data_sheets_is_a_range_and_a_minus_stays_a_minus() {
    for (String text : new String[] {"50-65 µm", "50 - 65 um", "50–65µm", "50 um-65 um"}) {
      isRange(text, Dimension.FILM, UnitSystem.US, 50e-6, 65e-6);
    }
    isRange("4-6\"", Dimension.LENGTH, UnitSystem.METRIC, 0.1016, 0.1524);
    isRange("3½-4½ in", Dimension.LENGTH, UnitSystem.METRIC, 0.0889, 0.1143);
    isRange("P400-P600", Dimension.GRIT, UnitSystem.METRIC, 400, 600);
    isRange("-8 to 8 %", Dimension.SHARE, UnitSystem.METRIC, -0.08, 0.08);
    isRange("-8 - 8 %", Dimension.SHARE, UnitSystem.METRIC, -0.08, 0.08);
    isRange("-8 to -2 %", Dimension.SHARE, UnitSystem.METRIC, -0.08, -0.02);
  }

  @Test
  void the_short_words_of_data_sheets_are_one_limit() {
    double open = Double.POSITIVE_INFINITY;
    for (String text : new String[] {"min. 50 um", "≥ 50 µm", "At least 50 µm", "minimum 50 µm"}) {
      isRange(text, Dimension.FILM, UnitSystem.US, 50e-6, open);
    }
    for (String text : new String[] {"max 65 µm", "≤65 µm", "up to 65 µm", "at most 65 µm"}) {
      isRange(text, Dimension.FILM, UnitSystem.US, -open, 65e-6);
    }
  }

  @Test
  void what_is_wrong_is_named() {
    assertThat(trouble("65-50 um", Dimension.FILM)).startsWith("targets.wrong.reversed[65");
    assertThat(trouble("50 to 65 psi", Dimension.FILM))
        .startsWith("targets.wrong.unit.PRESSURE[psi, µm");
    assertThat(trouble("50 to 65 in", Dimension.FILM)).startsWith("targets.wrong.unit.LENGTH[in");
    assertThat(trouble("5 to 6 yards", Dimension.LENGTH))
        .startsWith("targets.wrong.unit.none[yards, mm");
    assertThat(trouble("20", Dimension.PRESSURE)).isEqualTo("targets.wrong.one-value[20]");
    assertThat(trouble("shiny", Dimension.GLOSS)).startsWith("targets.wrong.not-a-range[shiny,");
    assertThat(trouble(" ", Dimension.GLOSS)).startsWith("targets.wrong.empty[");
  }

  private static String trouble(String text, Dimension dimension) {
    ReadTarget read = TargetText.understand(text, dimension, UnitSystem.METRIC);
    assertThat(read).as(text).isInstanceOf(ReadTarget.NotUnderstood.class);
    ReadTarget.NotUnderstood n = (ReadTarget.NotUnderstood) read;
    return n.key() + n.args();
  }

  @Test
  void what_is_no_range_is_refused() {
    for (String text : new String[] {"", "much", "5", "5 to 3 in", "3 to psi", "24 ± -1", "± 3"}) {
      assertThat(TargetText.read(text, Dimension.LENGTH, UnitSystem.US)).as(text).isEmpty();
    }
  }

  @Test
  void a_bare_range_is_kept_with_the_unit_that_was_meant() {
    assertThat(TargetText.withUnit("22 to 26", Dimension.PRESSURE, UnitSystem.US))
        .isEqualTo("22 to 26 psi");
    assertThat(TargetText.withUnit("24 ± 1", Dimension.PRESSURE, UnitSystem.US))
        .isEqualTo("24 ± 1 psi");
    assertThat(TargetText.withUnit("50-65", Dimension.FILM, UnitSystem.METRIC))
        .isEqualTo("50-65 µm");
    assertThat(TargetText.withUnit("max. 65", Dimension.FILM, UnitSystem.METRIC))
        .isEqualTo("max. 65 µm");
  }

  @Test
  void a_unit_that_is_named_stays_the_only_one() {
    assertThat(TargetText.withUnit("24 psi ± 1", Dimension.PRESSURE, UnitSystem.METRIC))
        .isEqualTo("24 psi ± 1");
    assertThat(TargetText.withUnit("3 in to 5", Dimension.LENGTH, UnitSystem.METRIC))
        .isEqualTo("3 in to 5");
  }
}
