package lapline.trade.hiding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import lapline.Samples;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** S and K per thickness, and the film that hides, from one film over both backings. */
class TwoConstantsProperties {
  private static final int CARDS = 20_000;

  private static TwoConstants read(double r0, double rw, double white, double film, double u) {
    return new TwoConstants(
        Estimate.of(r0, u * r0),
        Estimate.of(rw, u * rw),
        Estimate.of(white, u * white),
        Estimate.of(film, u * film));
  }

  private static TwoConstants film(KubelkaMunk paint, double scattering, double film, double u) {
    double sx = scattering * film;
    return read(paint.overBlack(sx), paint.over(0.8, sx), 0.8, film, u);
  }

  @Test
  void a_film_gives_its_paints_constants_back() {
    Samples.each(
        200,
        chance -> {
          KubelkaMunk paint = new KubelkaMunk(0.1 + 0.85 * chance.nextDouble());
          double scattering = (0.02 + 0.1 * chance.nextDouble()) * 1e6;
          TwoConstants read =
              film(paint, scattering, (0.3 + chance.nextDouble()) / scattering, 0.001);
          assertThat(read.reflectivity().value()).isCloseTo(paint.reflectivity(), within(1e-7));
          assertThat(read.scattering().value() / scattering).isCloseTo(1, within(1e-5));
          assertThat(read.absorption().value())
              .isCloseTo(scattering * paint.absorption(), within(1e-4 * scattering));
          double hides = paint.sxAtContrast(0.98, 0.8) / scattering;
          assertThat(read.filmThatHides().value() / hides).isCloseTo(1, within(1e-5));
          assertThat(read.spreadingAtHiding(0.4).value() * hides).isCloseTo(0.4, within(1e-5));
        });
  }

  /** Table of the closed form: R∞ 0.6 hides at SX 3.708540; S 0.1 per µm, 12 µm a coat: 4 coats. */
  @Test
  void coats_follow_from_the_film_that_hides() {
    TwoConstants read = film(new KubelkaMunk(0.6), 0.1e6, 12e-6, 0.005);
    CoatsToHiding coats = read.coatsToHiding(Estimate.of(12e-6, 0.5e-6));

    assertThat(read.filmThatHides().value() * 1e6).isCloseTo(37.0854, within(1e-4));
    assertThat(((CoatsToHiding.Computed) coats).coats()).isEqualTo(4);
    assertThat(coats.probabilityWithin(TargetRange.atMost(4)).getAsDouble()).isGreaterThan(0.99);
    assertThat(coats.probabilityWithin(TargetRange.atMost(3)).getAsDouble()).isBetween(0.1, 0.5);
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0.7, 0.005", "0.6, 1.2, 0.005", "0.6, 1.2, 0.01", "0.8, 1.5, 0.01"})
  void the_stated_intervals_hold_the_true_values(double reflectivity, double sx, double u) {
    KubelkaMunk paint = new KubelkaMunk(reflectivity);
    double scattering = 0.1e6;
    double film = sx / scattering;
    double hides = paint.sxAtContrast(0.98, 0.8) / scattering;
    Random chance = new Random(1);
    int heldScattering = 0;
    int heldFilm = 0;
    for (int i = 0; i < CARDS; i++) {
      TwoConstants read =
          read(
              paint.overBlack(sx) * (1 + u * chance.nextGaussian()),
              paint.over(0.8, sx) * (1 + u * chance.nextGaussian()),
              0.8 * (1 + u * chance.nextGaussian()),
              film * (1 + u * chance.nextGaussian()),
              u);
      heldScattering += holds(read.scattering(), scattering) ? 1 : 0;
      heldFilm += holds(read.filmThatHides(), hides) ? 1 : 0;
    }
    assertThat(heldScattering / (double) CARDS).isBetween(0.94, 0.96);
    assertThat(heldFilm / (double) CARDS).isBetween(0.94, 0.96);
  }

  private static boolean holds(Estimate found, double truth) {
    return Math.abs(found.value() - truth) <= 1.959964 * found.standardUncertainty();
  }

  /** Saunderson's formula by hand: k₁ 0.04, k₂ 0.5, 0.6 inside is read as 0.451429. */
  @Test
  void a_gloss_surface_is_taken_off_and_put_on() {
    GlossSurface gloss = new GlossSurface(0.04, 0.5);

    assertThat(gloss.putOn(0.6)).isCloseTo(0.451429, within(1e-6));
    Samples.each(
        100,
        chance -> {
          double inside = chance.nextDouble();
          assertThat(gloss.takenOff(gloss.putOn(inside))).isCloseTo(inside, within(1e-12));
        });
    assertThat(gloss.putOn(0)).isEqualTo(0.04);
    assertThat(gloss.takenOff(1)).isCloseTo(1, within(1e-12));
  }
}
