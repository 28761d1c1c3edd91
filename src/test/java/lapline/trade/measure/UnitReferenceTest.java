package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Units by their definitions: NIST Special Publication 811:2008, appendix B (from memory). */
class UnitReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "units.csv", useHeadersInDisplayName = true)
  void a_unit_is_what_its_definition_says(Unit unit, double oneInSi, double tolerance) {
    assertThat(unit.toSi(1)).isCloseTo(oneInSi, within(Math.abs(oneInSi) * tolerance));
  }

  @Test
  void ten_psi_are_not_seven_tenths_of_a_bar() {
    assertThat(Unit.KILOPASCAL.fromSi(Unit.PSI.toSi(10))).isCloseTo(68.948, within(5e-4));
  }

  @Test
  void water_freezes_and_boils_where_both_scales_say() {
    assertThat(Unit.FAHRENHEIT.toSi(32)).isCloseTo(0, within(1e-14));
    assertThat(Unit.FAHRENHEIT.toSi(212)).isCloseTo(100, within(1e-13));
    assertThat(Unit.FAHRENHEIT.fromSi(-40)).isCloseTo(-40, within(1e-13));
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void people_read_and_write_in_units_that_they_use(Dimension dimension) {
    for (UnitSystem system : UnitSystem.values()) {
      Unit preferred = Unit.preferred(dimension, system);
      assertThat(preferred.dimension()).isEqualTo(dimension);
      assertThat(preferred.belongsTo(system)).as(preferred + " in " + system).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({"INCH, false, true", "MILLIMETRE, true, false", "GRAM, true, true"})
  void a_unit_belongs_to_those_who_use_it(Unit unit, boolean metric, boolean us) {
    assertThat(unit.belongsTo(UnitSystem.METRIC)).isEqualTo(metric);
    assertThat(unit.belongsTo(UnitSystem.US)).isEqualTo(us);
  }
}
