package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import lapline.Samples;
import lapline.trade.measure.ReadQuantity.Understood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds for reading and writing of every quantity. */
class QuantityProperties {

  @ParameterizedTest
  @EnumSource(Unit.class)
  void a_unit_converts_there_and_back(Unit unit) {
    Samples.each(
        100,
        chance -> {
          double value = Samples.ofAnySize(chance, 1e-3, 1e4);
          double range = Math.max(value, 500);
          assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(range * 1e-14));
          assertThat(unit.stepFromSi(unit.toSi(value + 1) - unit.toSi(value)))
              .isCloseTo(1, within(range * 1e-11));
        });
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void every_spelling_of_a_unit_is_read_as_that_unit(Unit unit) {
    for (String spelling : unit.spellings()) {
      if (!spelling.isEmpty()) {
        Understood read =
            (Understood) QuantityReader.read("3 " + spelling, unit.dimension(), UnitSystem.US);
        assertThat(read.si()).as(spelling).isEqualTo(unit.toSi(3));
        assertThat(read.unit()).as(spelling).isEqualTo(unit);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void what_is_written_reads_back_as_written(Dimension dimension) {
    Samples.each(
        200,
        chance -> {
          UnitSystem system = Samples.oneOf(chance, UnitSystem.values());
          double si = sensible(chance, dimension, system);
          String written = QuantityWriter.write(si, dimension, system);
          Understood read = (Understood) QuantityReader.read(written, dimension, system);
          assertThat(read.shownAs()).isEqualTo(written);
        });
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void a_field_sent_back_untouched_changes_nothing_that_matters(Dimension dimension) {
    Samples.each(
        200,
        chance -> {
          UnitSystem system = Samples.oneOf(chance, UnitSystem.values());
          double si = sensible(chance, dimension, system);
          Unit unit = Unit.preferred(dimension, system);
          String typed = QuantityWriter.typed(si, dimension, system);
          Understood read = (Understood) QuantityReader.read(typed, dimension, system);
          double lost = dimension == Dimension.CLOCK ? 60 : Math.abs(unit.fromSi(si)) * 1e-6;
          assertThat(unit.fromSi(read.si())).isCloseTo(unit.fromSi(si), within(lost));
          assertThat(QuantityWriter.typed(read.si(), dimension, system)).isEqualTo(typed);
        });
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void no_text_at_all_makes_the_reader_throw(Dimension dimension) {
    Samples.each(
        2000,
        chance -> {
          String typed = Samples.text(chance, 45);
          ReadQuantity read =
              QuantityReader.read(typed, dimension, Samples.oneOf(chance, UnitSystem.values()));
          if (read instanceof Understood understood) {
            assertThat(understood.si()).as(typed).isFinite();
            assertThat(understood.unit().dimension()).isEqualTo(dimension);
          }
        });
  }

  @Test
  void the_written_range_holds_the_value_and_its_rounding_is_small() {
    Samples.each(
        500,
        chance -> {
          double si = Samples.ofAnySize(chance, 1e-6, 1e-3);
          double u = Samples.ofAnySize(chance, 1e-8, 1e-5);
          String[] parts =
              QuantityWriter.write(Estimate.of(si, u), Dimension.FILM, UnitSystem.METRIC)
                  .split("\u00a0");
          double value = Double.parseDouble(parts[0]);
          double expanded = Double.parseDouble(parts[2]);
          assertThat(expanded).isCloseTo(2 * u * 1e6, within(2 * u * 1e6 * 0.17));
          assertThat(value).isCloseTo(si * 1e6, within(expanded * 0.2));
          assertThat(decimals(parts[0])).isEqualTo(decimals(parts[2]));
        });
  }

  private static int decimals(String figures) {
    int point = figures.indexOf('.');
    return point < 0 ? 0 : figures.length() - point - 1;
  }

  private static double sensible(RandomGenerator chance, Dimension dimension, UnitSystem system) {
    Unit unit = Unit.preferred(dimension, system);
    double value = Samples.ofAnySize(chance, 0.01, 2e4);
    return switch (dimension) {
      case CLOCK -> chance.nextInt(86400);
      case COUNT, CHOICE -> Math.rint(value);
      case GRIT -> 1 + chance.nextInt(5000);
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> unit.toSi(value / 100 - 50);
      default -> unit.toSi(value);
    };
  }
}
