package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.Samples;
import org.junit.jupiter.api.Test;

/** What CIEDE2000 works out without arcs is what the printed formulas give with them. */
class HueWithoutArcsProperties {

  private static double sine(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }

  @Test
  void the_twist_among_blues_is_that_of_the_formula_at_every_hue() {
    for (double hue = 0; hue < 360; hue += 0.01) {
      double fromBlue = (hue - 275) / 25;
      double angle = 60 * Math.exp(-fromBlue * fromBlue);

      assertThat(BlueTwist.sine(Hue.cosine(hue), sine(hue)))
          .as("hue %s", hue)
          .isCloseTo(sine(angle), within(1e-14));
    }
  }

  /** Sharma, Wu, Dalal, equations 10, 11 and 14. */
  @Test
  void mean_hue_and_step_are_those_of_the_angles() {
    Samples.each(
        20_000,
        chance -> {
          double h1 = 360 * chance.nextDouble();
          double h2 = 360 * chance.nextDouble();
          double c1 = Samples.ofAnySize(chance, 1e-3, 150);
          double c2 = Samples.ofAnySize(chance, 1e-3, 150);
          double turn = h2 - h1 > 180 ? h2 - h1 - 360 : h2 - h1 < -180 ? h2 - h1 + 360 : h2 - h1;
          double mean = h1 + turn / 2;

          HuePair pair =
              HuePair.of(
                  c1 * Hue.cosine(h1), c1 * sine(h1), c1, c2 * Hue.cosine(h2), c2 * sine(h2), c2);

          double size = 2 * Math.sqrt(c1 * c2);
          assertThat(pair.step()).isCloseTo(size * sine(turn / 2), within(1e-12 * size));
          assertThat(pair.cos()).isCloseTo(Hue.cosine(mean), within(1e-12));
          assertThat(pair.sin()).isCloseTo(sine(mean), within(1e-12));
        });
  }
}
