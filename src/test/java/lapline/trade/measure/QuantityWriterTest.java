package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities are written as a person of the trade would, in that person's units. */
class QuantityWriterTest {

  @ParameterizedTest
  @CsvFileSource(resources = "written.csv", delimiter = '|', useHeadersInDisplayName = true)
  void quantities_are_written_at_sensible_precision(
      double si, double u, Dimension dimension, UnitSystem system, String text) {
    if (u == 0) {
      assertThat(QuantityWriter.write(si, dimension, system).replace('\u00a0', ' '))
          .isEqualTo(text);
    }
    if (Double.isFinite(si)) {
      assertThat(QuantityWriter.write(Estimate.of(si, u), dimension, system).replace('\u00a0', ' '))
          .isEqualTo(text);
    }
  }

  /** Minutes from two on, hours from two on; a nought has no sign. */
  @ParameterizedTest
  @CsvSource({"119.9, 119.9 s", "120, 2 min", "7199, 119 min 59 s", "7200, 2 h", "-0.0, 0 s"})
  void a_time_is_said_as_it_is_spoken_of(double seconds, String text) {
    assertThat(
            QuantityWriter.write(seconds, Dimension.DURATION, UnitSystem.METRIC)
                .replace('\u00a0', ' '))
        .isEqualTo(text);
  }

  /** From where a length would be rounded to two metres or to six feet. */
  @Test
  void a_long_length_is_said_in_the_larger_unit() {
    assertThat(shown(Unit.MILLIMETRE.toSi(1999.95), UnitSystem.METRIC)).isEqualTo("2 m");
    assertThat(shown(Unit.MILLIMETRE.toSi(1999.9), UnitSystem.METRIC)).isEqualTo("1999.9 mm");
    assertThat(shown(Unit.INCH.toSi(71.995), UnitSystem.US)).isEqualTo("6 ft");
    assertThat(shown(Unit.INCH.toSi(71.99), UnitSystem.US)).isEqualTo("71.99 in");
  }

  @Test
  void beside_its_field_a_quantity_keeps_the_unit_of_the_field() {
    assertThat(inField(Unit.INCH.toSi(254), Dimension.LENGTH)).isEqualTo("254 in");
    assertThat(inField(5400, Dimension.DURATION)).isEqualTo("5400 s");
    assertThat(inField(50700, Dimension.CLOCK)).isEqualTo("14:05");
    assertThat(inField(800, Dimension.GRIT)).isEqualTo("P800");
    assertThat(inField(Double.NaN, Dimension.LENGTH)).isEqualTo("–");
  }

  private static String inField(double si, Dimension dimension) {
    return QuantityWriter.inField(si, SpokenUnits.usual(dimension), UnitSystem.US)
        .replace('\u00a0', ' ');
  }

  private static String shown(double metres, UnitSystem system) {
    return QuantityWriter.write(metres, Dimension.LENGTH, system).replace('\u00a0', ' ');
  }

  @Test
  void two_minutes_and_what_they_are_unsure_of_are_said_as_two_times() {
    assertThat(
            QuantityWriter.write(Estimate.of(120, 5), Dimension.DURATION, UnitSystem.METRIC)
                .replace('\u00a0', ' '))
        .isEqualTo("2 min ± 10 s");
  }

  @Test
  void an_uncertainty_from_three_readings_is_expanded_by_more_than_two() {
    Estimate few = new Estimate(62e-6, 1e-6, 2);
    assertThat(QuantityWriter.write(few, Dimension.FILM, UnitSystem.METRIC))
        .isEqualTo("62\u00a0±\u00a05\u00a0µm");
  }

  @Test
  void what_a_field_is_filled_with_keeps_the_figures_that_a_drawing_leaves_out() {
    assertThat(QuantityWriter.number(50e-6, Dimension.FILM, UnitSystem.US)).isEqualTo("1.97");
    assertThat(QuantityWriter.typed(50e-6, Dimension.FILM, UnitSystem.US)).isEqualTo("1.968504");
    assertThat(QuantityWriter.typed(-5, Dimension.TEMPERATURE, UnitSystem.METRIC)).isEqualTo("-5");
    assertThat(QuantityWriter.typed(Double.NaN, Dimension.FILM, UnitSystem.US)).isEmpty();
  }

  @Test
  void figures_are_the_same_in_every_language() {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(QuantityWriter.write(50700, Dimension.CLOCK, UnitSystem.METRIC))
          .isEqualTo("14:05");
      assertThat(QuantityWriter.number(2.5, Dimension.NUMBER, UnitSystem.METRIC)).isEqualTo("2.5");
    } finally {
      Locale.setDefault(usual);
    }
  }
}
