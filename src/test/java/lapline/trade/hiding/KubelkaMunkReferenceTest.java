package lapline.trade.hiding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class KubelkaMunkReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "kubelka-munk.csv", useHeadersInDisplayName = true)
  void a_film_reflects_as_the_closed_forms_say(
      double reflectivity,
      double absorption,
      double sx,
      double overBlack,
      double overWhite,
      double contrast) {
    KubelkaMunk paint = new KubelkaMunk(reflectivity);

    assertThat(paint.absorption()).isCloseTo(absorption, within(5.1e-7));
    assertThat(paint.overBlack(sx)).isCloseTo(overBlack, within(5.1e-7));
    assertThat(paint.over(0.8, sx)).isCloseTo(overWhite, within(5.1e-7));
    assertThat(paint.contrast(0.8, sx)).isCloseTo(contrast, within(5.1e-7));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "sx-at-hiding.csv", useHeadersInDisplayName = true)
  void a_paint_hides_from_so_much_scattering_on(
      double reflectivity, double sx, double overBlack, double overWhite) {
    KubelkaMunk paint = new KubelkaMunk(reflectivity);
    double found = paint.sxAtContrast(ContrastRatio.HIDING, 0.8);

    assertThat(found).isCloseTo(sx, within(1e-6));
    assertThat(paint.overBlack(found)).isCloseTo(overBlack, within(1e-6));
    assertThat(paint.over(0.8, found)).isCloseTo(overWhite, within(1e-6));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "contrast-by-coat.csv", useHeadersInDisplayName = true)
  void contrast_grows_from_coat_to_coat(int coats, double rich, double middling, double poor) {
    KubelkaMunk paint = new KubelkaMunk(0.6);

    assertThat(paint.contrast(0.8, 1.20 * coats)).isCloseTo(rich, within(5.1e-6));
    assertThat(paint.contrast(0.8, 0.60 * coats)).isCloseTo(middling, within(5.1e-6));
    assertThat(paint.contrast(0.8, 0.45 * coats)).isCloseTo(poor, within(5.1e-6));
  }

  /** Computed from the formula: 3.708540 over the coat's scattering, rounded up. */
  @ParameterizedTest
  @CsvSource({"1.20, 4", "0.60, 7", "0.45, 9"})
  void whole_coats_hide(double perCoat, int coats) {
    assertThat(new KubelkaMunk(0.6).coatsToHiding(perCoat, 0.8)).isEqualTo(coats);
  }

  /** A paint that absorbs nothing: R₀ = SX / (1 + SX), the limit of Kubelka's form. */
  @Test
  void a_film_that_absorbs_nothing_is_read_back_too() {
    assertThat(new KubelkaMunk(1).sxFrom(0.5)).isCloseTo(1, within(1e-12));
    assertThat(new KubelkaMunk(1).sxFrom(0.75)).isCloseTo(3, within(1e-12));
  }
}
