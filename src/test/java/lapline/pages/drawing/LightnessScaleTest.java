package lapline.pages.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Thin is light, thick is dark, in even steps, also without colour. */
class LightnessScaleTest {

  @Test
  void lightness_falls_in_even_steps_from_96_to_50() {
    for (int i = 0; i <= 20; i++) {
      double wanted = 96 - 46 * i / 20.0;
      assertThat(lightness(LightnessScale.at(i / 20.0))).isCloseTo(wanted, within(0.5));
    }
  }

  @Test
  void a_grey_print_keeps_the_order() {
    List<Double> greys = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      Tone tone = LightnessScale.at(i / 40.0);
      greys.add(-(0.299 * tone.red() + 0.587 * tone.green() + 0.114 * tone.blue()));
    }
    assertThat(greys).isSorted();
  }

  @Test
  void beyond_the_ends_the_end_tone_is_taken() {
    assertThat(LightnessScale.at(-3)).isEqualTo(LightnessScale.at(0));
    assertThat(LightnessScale.at(7)).isEqualTo(LightnessScale.at(1));
  }

  private static double lightness(Tone tone) {
    double y =
        0.2126 * linear(tone.red()) + 0.7152 * linear(tone.green()) + 0.0722 * linear(tone.blue());
    return 116 * Math.cbrt(y) - 16;
  }

  private static double linear(int part) {
    double v = part / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }
}
