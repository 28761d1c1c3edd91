package lapline.content.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NumberAndUnitTest {

  private static String shown(String text) {
    return NumberAndUnit.together(text).replace('\u00a0', '~');
  }

  @Test
  void a_unit_stays_beside_its_number() {
    assertThat(shown("Hold it 150 mm off, at 2 bar, for 5 min."))
        .isEqualTo("Hold it 150~mm off, at 2~bar, for 5~min.");
    assertThat(shown("50 to 75 µm at 20 °C and 60 % humidity, 16 fl oz"))
        .isEqualTo("50 to 75~µm at 20~°C and 60~% humidity, 16~fl oz");
  }

  @Test
  void a_unit_is_known_by_its_capitals_or_without() {
    assertThat(shown("480, 120 and 120 ml")).isEqualTo("480, 120 and 120~ml");
  }

  @Test
  void a_word_that_only_begins_like_a_unit_is_none() {
    assertThat(shown("3 minds, 4 great coats and 2 gaps"))
        .isEqualTo("3 minds, 4 great coats and 2 gaps");
  }
}
