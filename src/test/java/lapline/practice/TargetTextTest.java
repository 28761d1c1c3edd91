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
  }

  @Test
  void a_unit_that_is_named_stays_the_only_one() {
    assertThat(TargetText.withUnit("24 psi ± 1", Dimension.PRESSURE, UnitSystem.METRIC))
        .isEqualTo("24 psi ± 1");
    assertThat(TargetText.withUnit("3 in to 5", Dimension.LENGTH, UnitSystem.METRIC))
        .isEqualTo("3 in to 5");
  }
}
