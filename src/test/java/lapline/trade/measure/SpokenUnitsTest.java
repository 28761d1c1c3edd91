package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.ReadQuantity.Understood;
import org.junit.jupiter.api.Test;

class SpokenUnitsTest {
  private static final SpokenUnits JOB = new SpokenUnits(Unit.MINUTE, Unit.MINUTE);
  private static final SpokenUnits TAPE = new SpokenUnits(Unit.METRE, Unit.FOOT);
  private static final SpokenUnits TIP = new SpokenUnits(Unit.MILLIMETRE, Unit.MILLIMETRE);

  private static void isRead(String typed, SpokenUnits as, UnitSystem by, double si, String shown) {
    Understood read = (Understood) QuantityReader.read(typed, as, by);
    assertThat(read.si()).as(typed).isCloseTo(si, within(1e-12));
    assertThat(read.shownAs().replace('\u00a0', ' ')).as(typed).isEqualTo(shown);
  }

  @Test
  void a_bare_number_is_in_the_unit_that_people_speak_of() {
    isRead("42", JOB, UnitSystem.METRIC, 42 * 60, "42 min");
    isRead("8", TAPE, UnitSystem.METRIC, 8, "8 m");
    isRead("26", TAPE, UnitSystem.US, 26 * 0.3048, "26 ft");
    isRead("1.3", TIP, UnitSystem.US, 0.0013, "1.3 mm");
  }

  @Test
  void a_unit_that_is_written_wins() {
    isRead("42 s", JOB, UnitSystem.METRIC, 42, "42 s");
    isRead("1:30", JOB, UnitSystem.METRIC, 90, "90 s");
    isRead("8 ft", TAPE, UnitSystem.METRIC, 8 * 0.3048, "2.44 m");
    isRead("0.05 in", TIP, UnitSystem.US, 0.00127, "1.3 mm");
  }

  @Test
  void a_value_and_what_it_is_unsure_of_are_in_it_too() {
    assertThat(
            QuantityWriter.write(Estimate.of(55 * 60, 30), JOB, UnitSystem.METRIC)
                .replace('\u00a0', ' '))
        .isEqualTo("55.0 ± 1.0 min");
    assertThat(
            QuantityWriter.write(Estimate.of(6.5, 0.1), TAPE, UnitSystem.METRIC)
                .replace('\u00a0', ' '))
        .isEqualTo("6.50 ± 0.20 m");
  }

  @Test
  void the_two_units_measure_the_same_thing() {
    assertThatThrownBy(() -> new SpokenUnits(Unit.MINUTE, Unit.FOOT))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
