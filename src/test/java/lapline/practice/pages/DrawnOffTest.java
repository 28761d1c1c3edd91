package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import lapline.practice.PanelScore;
import lapline.practice.WrittenPanel;
import org.junit.jupiter.api.Test;

/** Whether the film that the what-if page draws may be taken for the panel's own. */
class DrawnOffTest {
  private static final double SCATTER = 1.8e-6;

  private static DrawnOff off(double... film) {
    PanelScore score =
        WrittenPanel.against(
                WrittenPanel.criterion(
                    "film", "film-build", "50 to 65 um", "critical: yes, weight: 1, fade: 6 um"))
            .putAtPlaces("film-after", film)
            .score();
    return DrawnOff.of(score, SCATTER);
  }

  private static double[] even() {
    double[] film = new double[15];
    Arrays.setAll(film, i -> 57 + (i % 3 - 1));
    return film;
  }

  @Test
  void an_even_film_is_the_panels_own() {
    assertThat(off(even()).isAnotherFilm()).isFalse();
  }

  /** By hand: every reading lies 9 off the mean, which is the nearest that a stroke can come. */
  @Test
  void a_film_that_no_stroke_makes_is_another_and_its_distance_is_told() {
    double[] film = new double[15];
    Arrays.setAll(film, i -> 57 + (i % 2 == 0 ? 9 : -9));
    DrawnOff off = off(film);
    assertThat(off.noPattern()).isTrue();
    assertThat(off.isAnotherFilm()).isTrue();
    assertThat(off.half()).isCloseTo(9e-6, within(1.5e-6));
  }

  @Test
  void one_stray_does_not_discredit_the_film_of_all_the_others() {
    double[] film = even();
    film[6] = 20;
    assertThat(off(film).isAnotherFilm()).isFalse();
  }

  @Test
  void a_fault_that_was_found_beside_much_that_was_not_is_told_as_rough() {
    assertThat(new DrawnOff(3e-6, 1.2e-6, false).isAnotherFilm()).isTrue();
    assertThat(new DrawnOff(2.3e-6, 1.2e-6, false).isAnotherFilm()).isFalse();
  }
}
