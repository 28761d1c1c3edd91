package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.measure.ReadQuantity.NotUnderstood;
import lapline.trade.measure.ReadQuantity.Problem;
import lapline.trade.measure.ReadQuantity.Understood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type in a shop is understood, and what cannot be is said so. */
class QuantityReaderTest {

  @ParameterizedTest
  @CsvFileSource(
      resources = "typed.csv",
      delimiter = '|',
      quoteCharacter = '~',
      useHeadersInDisplayName = true)
  void what_is_typed_in_the_shop_is_understood(
      String typed, Dimension dimension, UnitSystem system, double si) {
    ReadQuantity read = QuantityReader.read(typed, dimension, system);
    assertThat(read).isInstanceOf(Understood.class);
    assertThat(((Understood) read).si()).isCloseTo(si, within(Math.abs(si) * 1e-12));
  }

  @Test
  void spaces_that_do_not_break_are_spaces() {
    assertThat(si("1\u00a0250\u202fµm", Dimension.FILM)).isCloseTo(1250e-6, within(1e-15));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "--3",
        "3..",
        "1.2.3",
        "1,25,000",
        "1,000,25",
        "1/0",
        "25:70",
        "NaN",
        "Infinity",
        "0x1p3",
        "12 bananas",
        "5 to 6",
        "<5",
        "~62",
        "62 60",
        "102\t105",
        "62 um dry",
        "3²",
        "µm",
        ".",
        "1e"
      })
  void what_is_no_quantity_is_told_apart(String typed) {
    assertThat(reason(typed, Dimension.FILM)).isIn(Problem.NOT_A_NUMBER, Problem.WRONG_UNIT);
  }

  @ParameterizedTest
  @CsvSource({
    "24:00,CLOCK",
    "14:60,CLOCK",
    "13 pm,CLOCK",
    "0 am,CLOCK",
    "14,CLOCK",
    "P0,GRIT",
    "P,GRIT",
    "-800,GRIT",
    "30 s 1 min,DURATION",
    "1:90,DURATION",
    "5 in 3 ft,LENGTH",
    "1 ft 2 ft,LENGTH",
    "1 min 30 min,DURATION",
    "5 x y,NUMBER",
    "12 mm,NUMBER"
  })
  void each_kind_of_quantity_refuses_what_it_has_no_use_for(String typed, Dimension dimension) {
    assertThat(reason(typed, dimension)).isEqualTo(Problem.NOT_A_NUMBER);
  }

  @Test
  void a_unit_of_another_kind_is_named_with_its_kind_and_with_those_that_would_do() {
    NotUnderstood read =
        (NotUnderstood) QuantityReader.read("3 psi", Dimension.FILM, UnitSystem.METRIC);
    assertThat(read.reason()).isEqualTo(Problem.WRONG_UNIT);
    assertThat(read.args()).containsExactly("psi", "µm, mil, mm", "PRESSURE");
  }

  @Test
  void a_word_that_is_no_unit_is_named_with_those_that_would_do() {
    NotUnderstood read =
        (NotUnderstood) QuantityReader.read("3 bananas", Dimension.FILM, UnitSystem.METRIC);
    assertThat(read.args()).containsExactly("bananas", "µm, mil, mm", "");
  }

  @Test
  void things_are_counted_whole() {
    assertThat(reason("2.5", Dimension.COUNT)).isEqualTo(Problem.NOT_WHOLE);
    assertThat(si("2.0", Dimension.COUNT)).isEqualTo(2);
  }

  @Test
  void nothing_typed_is_empty_and_a_page_of_text_is_too_long() {
    for (String nothing : List.of("", "  ", "\u00a0", "\t\n", " ".repeat(5000))) {
      assertThat(reason(nothing, Dimension.FILM)).isEqualTo(Problem.EMPTY);
    }
    assertThat(reason(null, Dimension.FILM)).isEqualTo(Problem.EMPTY);
    assertThat(reason("9".repeat(5000), Dimension.FILM)).isEqualTo(Problem.TOO_LONG);
  }

  @Test
  void what_no_shop_measures_is_not_finite() {
    assertThat(reason("1e999", Dimension.FILM)).isEqualTo(Problem.NOT_FINITE);
    assertThat(reason("9".repeat(40), Dimension.FILM)).isEqualTo(Problem.NOT_FINITE);
  }

  @Test
  void a_reading_is_shown_back_in_the_units_of_its_reader() {
    assertThat(shown("2.4 mil", UnitSystem.METRIC)).isEqualTo("61\u00a0µm");
    assertThat(shown("62 um", UnitSystem.US)).isEqualTo("2.44\u00a0mil");
    assertThat(shown("-0", UnitSystem.METRIC)).isEqualTo("0\u00a0µm");
  }

  @Test
  void nought_has_no_sign_and_the_greatest_is_still_read() {
    assertThat(1 / si("-0", Dimension.NUMBER)).isPositive();
    assertThat(1 / si("-0/4", Dimension.SHARE)).isPositive();
    assertThat(si("1e15", Dimension.NUMBER)).isEqualTo(1e15);
    assertThat(reason("1.001e15", Dimension.NUMBER)).isEqualTo(Problem.NOT_FINITE);
  }

  /** From the first full-width sign to the last, and no further. */
  @Test
  void full_width_signs_are_the_plain_ones() {
    assertThat(TypedText.tidy("！～｟")).isEqualTo("!~｟");
    assertThat(TypedText.tidy("６２　ｕｍ")).isEqualTo("62 um");
  }

  private static double si(String typed, Dimension dimension) {
    return ((Understood) QuantityReader.read(typed, dimension, UnitSystem.METRIC)).si();
  }

  private static String shown(String typed, UnitSystem system) {
    return ((Understood) QuantityReader.read(typed, Dimension.FILM, system)).shownAs();
  }

  private static Problem reason(String typed, Dimension dimension) {
    return ((NotUnderstood) QuantityReader.read(typed, dimension, UnitSystem.METRIC)).reason();
  }
}
