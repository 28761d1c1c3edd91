package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.ReadQuantity.NotUnderstood;
import lapline.trade.measure.ReadQuantity.Problem;
import lapline.trade.measure.ReadQuantity.Understood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type in a shop is understood, and what cannot be is said so. */
class QuantityReaderTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "62|FILM|METRIC|62e-6",
        "62,0|FILM|METRIC|62e-6",
        "62 um|FILM|US|62e-6",
        "2.4 mil|FILM|METRIC|60.96e-6",
        "2.4|FILM|US|60.96e-6",
        "3/4 in|LENGTH|METRIC|0.01905",
        "1 1/2 in|LENGTH|METRIC|0.0381",
        "1-1/2\"|LENGTH|METRIC|0.0381",
        "1½|LENGTH|US|0.0381",
        "10 in|LENGTH|METRIC|0.254",
        "1,250.5|NUMBER|METRIC|1250.5",
        "1.250,5|NUMBER|METRIC|1250.5",
        "1 250|NUMBER|METRIC|1250",
        "24 psi|PRESSURE|METRIC|165474.175",
        "2 bar|PRESSURE|US|200000",
        "70|SHARE|METRIC|0.7",
        "70 %|SHARE|METRIC|0.7",
        "68 F|TEMPERATURE|METRIC|20",
        "−5|TEMPERATURE|METRIC|-5",
        "10 min|DURATION|METRIC|600",
        "9:30|DURATION|METRIC|570",
        "9 min 30 s|DURATION|METRIC|570",
        "90|DURATION|METRIC|90",
        "14:05|CLOCK|METRIC|50700",
        "2:05 pm|CLOCK|METRIC|50700",
        "12:05 am|CLOCK|METRIC|300",
        "P800|GRIT|METRIC|800",
        "800|GRIT|METRIC|800",
        "2.5 turns|NUMBER|METRIC|2.5"
      })
  void what_is_typed_in_the_shop_is_understood(
      String typed, Dimension dimension, UnitSystem system, double si) {
    assertThat(QuantityReader.read(typed, dimension, system)).isInstanceOf(Understood.class);
    Understood read = (Understood) QuantityReader.read(typed, dimension, system);
    assertThat(read.si()).isCloseTo(si, within(Math.abs(si) * 1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "--3",
        "3..",
        "1/0",
        "25:70",
        "NaN",
        "Infinity",
        "0x1p3",
        "12 bananas",
        "1e999"
      })
  void what_is_no_number_is_told_apart(String typed) {
    assertThat(QuantityReader.read(typed, Dimension.FILM, UnitSystem.METRIC))
        .isInstanceOf(NotUnderstood.class);
  }

  @Test
  void a_unit_of_another_kind_is_named_with_those_that_would_do() {
    NotUnderstood read =
        (NotUnderstood) QuantityReader.read("3 psi", Dimension.FILM, UnitSystem.METRIC);
    assertThat(read.reason()).isEqualTo(Problem.WRONG_UNIT);
    assertThat(read.args()).containsExactly("psi", "µm, mil, mm");
  }

  @Test
  void nothing_typed_is_empty_and_a_page_of_text_is_too_long() {
    assertThat(((NotUnderstood) QuantityReader.read("  ", Dimension.FILM, UnitSystem.US)).reason())
        .isEqualTo(Problem.EMPTY);
    assertThat(
            ((NotUnderstood) QuantityReader.read("9".repeat(5000), Dimension.FILM, UnitSystem.US))
                .reason())
        .isEqualTo(Problem.TOO_LONG);
  }
}
